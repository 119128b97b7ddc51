package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plate of a transverse tibia: ten holes 16 mm apart, the zone between the holes 5 and 6. */
class PlateMakerTest {

  private static PlateSketch plate(String patch) {
    return Sketches.of(CaseText.plated().at("/operations/0/fixation/0", patch)).plates().get(0);
  }

  private static PlateSketch screws(String rows) {
    return plate("{screws: [" + rows + "]}");
  }

  private static List<Integer> holding(PlateSketch plate) {
    return plate.screws().stream().map(screw -> screw.hole() + 1).toList();
  }

  private static void spans(Dimension range, double min, double max) {
    assertThat(range.min()).isCloseTo(min, within(1e-9));
    assertThat(range.max()).isCloseTo(max, within(1e-9));
  }

  @Test
  void every_hole_lies_on_its_side_in_order() {
    PlateSketch plate = plate("{}");
    assertThat(plate.holes()).hasSize(10);
    assertThat(plate.holes().subList(0, 5)).allMatch(hole -> hole.at().middle() < 0);
    assertThat(plate.holes().subList(5, 10)).allMatch(hole -> hole.at().middle() > 0);
    assertThat(plate.holes().stream().map(hole -> hole.at().middle())).isSorted();
    assertThat(holding(plate)).containsExactly(1, 3, 5, 6, 8, 10);
  }

  @Test
  void sizes_that_are_told_are_kept() {
    PlateSketch plate = plate("{thicknessMm: 4, widthMm: 13, standOffMm: 1.5}");
    spans(plate.thickness(), 4, 4);
    spans(plate.width(), 13, 13);
    spans(plate.standOff(), 1.5, 1.5);
  }

  @Test
  void sizes_that_are_not_told_are_those_of_the_family() {
    PlateSketch plate = plate("{}");
    // 3.6 by 12 mm, for a screw of 4.5 mm
    spans(plate.thickness(), 3.24, 3.96);
    spans(plate.width(), 11.4, 12.6);
    spans(plate.hole(), 5, 6);
    assertThat(plate.thickness().assumed()).isTrue();
  }

  @Test
  void a_tubular_plate_counts_up_to_twice_as_thick() {
    spans(plate("{family: 'one-third-tubular'}").thickness(), 1, 2);
    spans(plate("{family: 'semi-tubular'}").thickness(), 1, 2);
  }

  @Test
  void a_hole_always_leaves_a_part_of_the_plate() {
    PlateSketch plate = plate("{widthMm: 6}");
    spans(plate.hole(), 4.8, 4.8);
  }

  @Test
  void a_stripped_screw_holds_nothing() {
    PlateSketch plate =
        screws(
            "{at: [1, 3, 8, 10], type: 'cortical', cortices: 2},"
                + " {at: [5], type: 'cortical', cortices: 2, state: 'stripped'},"
                + " {at: [6], type: 'cortical', cortices: 2, state: 'sound'}");
    assertThat(holding(plate)).containsExactly(1, 3, 6, 8, 10);
  }

  @Test
  void a_screw_that_came_loose_later_held_at_first() {
    PlateSketch plate =
        screws(
            "{at: [1, 3, 8], type: 'cortical', cortices: 2},"
                + " {at: [10], type: 'cortical', cortices: 2, state: 'loose', stateDay: 90}");
    assertThat(holding(plate)).containsExactly(1, 3, 8, 10);
  }

  @Test
  void a_screw_in_one_cortex_holds_in_the_near_one() {
    PlateSketch plate =
        screws("{at: [1, 3, 8, 10], type: 'cortical', cortices: 1, track: 'fresh'}");
    assertThat(plate.screws()).hasSize(4);
    assertThat(plate.screws()).allSatisfy(screw -> spans(screw.near(), 1, 1));
    assertThat(plate.screws()).allSatisfy(screw -> spans(screw.far(), 0, 0));
  }

  @Test
  void a_screw_over_the_zone_holds_nothing() {
    CaseText text =
        CaseText.plated()
            .at("/injury", "{pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}}")
            .at("/operations/0", "{compression: {method: 'none'}}")
            .at(
                "/operations/0/fixation/0",
                "{place: {zoneBetweenHoles: [4, 7]},"
                    + " screws: [{at: [1, 2, 5, 9, 10], type: 'cortical', cortices: 2}]}");
    assertThat(holding(Sketches.of(text).plates().get(0))).containsExactly(1, 2, 9, 10);
  }

  @ParameterizedTest(name = "{0} and {1}: {2} mm at most")
  @CsvSource({
    "locking,  locking,  2",
    "cortical, cortical, 0",
    // one pressed screw brings the plate down to the bone
    "locking,  cortical, 0"
  })
  void a_plate_with_locking_screws_alone_may_stand_off(String one, String other, double most) {
    PlateSketch plate =
        plate(
            "{family: 'large-fragment-narrow-locking', screws: [{at: [1, 3, 8], type: '"
                + one
                + "', cortices: 2}, {at: [10], type: '"
                + other
                + "', cortices: 2}]}");
    spans(plate.standOff(), 0, most);
    assertThat(plate.screws().get(0).locked()).isEqualTo(one.equals("locking"));
  }

  @Test
  void screws_have_the_diameter_told_or_that_of_the_family() {
    assertThat(plate("{}").screws()).allMatch(screw -> screw.thread().major() == 4.5);
    assertThat(screws("{at: [1, 10], type: 'cortical', diameterMm: 3.5, cortices: 2}").screws())
        .allMatch(screw -> screw.thread().major() == 3.5);
  }
}
