package org.bonewright.measures.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bonewright.measures.force.Sketches.PLATE;

import java.util.Set;
import org.bonewright.bone.BoneGrade;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the model can take, what it cannot, and what it asks for. */
class SketchMakerTest {

  private static String modelled(CaseText text) {
    return Taken.of("modelled-line", text);
  }

  private static CaseText nail(String patch) {
    return CaseText.nailed().at("/operations/0/fixation/0", patch);
  }

  private static CaseText holding(String fixation) {
    return CaseText.plated().at("/operations/0", "{fixation: [" + fixation + "]}");
  }

  @Nested
  class Outside_the_model {

    @Test
    void is_a_bone_that_nothing_holds() {
      assertThat(modelled(holding(""))).isEqualTo("none: nothing holds the bone");
    }

    @Test
    void is_a_fixator_of_rings() {
      assertThat(modelled(holding("{id: 'f', kind: 'external-fixator', frame: 'ring'}")))
          .isEqualTo("none: a ring or hybrid fixator is not modelled");
    }

    @Test
    void is_a_nail_without_bolts_at_one_end() {
      String free = "none: a nail without bolts at one end: what turns it is not modelled";
      CaseText one = nail("{bolts: [{end: 'near', atMm: 40}]}");
      assertThat(modelled(one)).isEqualTo(free);
      assertThat(modelled(nail("{locking: 'unlocked', bolts: []}"))).isEqualTo(free);
    }

    @Test
    void is_a_dynamic_nail_over_a_gap() {
      CaseText dynamic =
          nail("{locking: 'dynamic'}").at("/operations/0/reduction", "{gapNearMm: 2, gapFarMm: 2}");
      assertThat(modelled(dynamic))
          .isEqualTo("none: a dynamic nail lets the gap close; what follows is not modelled");
    }

    @Test
    void is_a_bone_with_two_lines() {
      assertThat(modelled(CaseText.plated().at("/injury", "{pattern: 'segmental'}")))
          .isEqualTo("none: the model knows one line, not two apart");
    }

    @Test
    void is_a_bone_held_by_screws_alone() {
      assertThat(modelled(holding("{id: 'lag-1', kind: 'lag-screw'}"))).startsWith("none: ");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"gap-strain", "plate-stress-range", "screw-pull-margin", "opening-moment"})
    void has_no_forces_either(String measure) {
      assertThat(Taken.of(measure, holding("{id: 'f', kind: 'external-fixator', frame: 'hybrid'}")))
          .isEqualTo("none: a ring or hybrid fixator is not modelled");
    }
  }

  @Nested
  class It_asks_for {

    @Test
    void the_construct_where_none_is_told() {
      assertThat(modelled(CaseText.plated().without("/operations/0/fixation")))
          .isEqualTo("unknown, ask op-1/fixation");
    }

    @ParameterizedTest
    @ValueSource(strings = {"family", "holes", "screws"})
    void just_what_is_missing_of_the_plate(String field) {
      CaseText text = CaseText.plated().without("/operations/0/fixation/0/" + field);
      assertThat(modelled(text)).isEqualTo("unknown, ask " + PLATE + field);
    }

    @ParameterizedTest
    @ValueSource(strings = {"outerMm", "bolts"})
    void just_what_is_missing_of_a_nail(String field) {
      CaseText text = CaseText.nailed().without("/operations/0/fixation/0/" + field);
      assertThat(modelled(text)).isEqualTo("unknown, ask op-1/fixation/nail-1/" + field);
    }

    @Test
    void the_level_of_a_bolt() {
      CaseText text = CaseText.nailed().without("/operations/0/fixation/0/bolts/2/atMm");
      assertThat(modelled(text)).isEqualTo("unknown, ask op-1/fixation/nail-1/bolts");
    }

    @Test
    void just_the_place_of_the_plate() {
      assertThat(modelled(CaseText.plated().without("/operations/0/fixation/0/place")))
          .isEqualTo("unknown, ask " + PLATE + "place");
    }

    @Test
    void everything_that_is_missing_at_once() {
      CaseText text =
          CaseText.plated()
              .without("/operations/0/fixation/0/screws")
              .without("/operations/0/reduction/gapFarMm");
      assertThat(modelled(text))
          .isEqualTo("unknown, ask op-1/reduction/gapFarMm and " + PLATE + "screws");
    }

    @Test
    void the_surfaces_of_two_plates() {
      CaseText two = twoPlates("", "");
      assertThat(modelled(two))
          .isEqualTo("unknown, ask " + PLATE + "surface and op-1/fixation/plate-2/surface");
      assertThat(modelled(twoPlates("surface: 'medial',", "")))
          .isEqualTo("unknown, ask op-1/fixation/plate-2/surface");
    }
  }

  private static CaseText twoPlates(String first, String second) {
    String rest =
        " kind: 'plate', family: 'large-fragment-narrow', holes: 10,"
            + " place: {zoneBetweenHoles: [5, 6]},"
            + " screws: [{at: [1, 3, 8, 10], type: 'cortical', cortices: 2}]}";
    return holding(
        "{id: 'plate-1', lengthMm: 160, "
            + first
            + rest
            + ", {id: 'plate-2', lengthMm: 158, "
            + second
            + rest);
  }

  @ParameterizedTest(name = "{0} and {1}: {2} degrees apart")
  @CsvSource({"medial, anterior, -270", "anterior, medial, 270", "medial, lateral, -180"})
  void two_plates_lie_around_the_bone_from_the_first(String first, String second, double apart) {
    Sketch sketch =
        Sketches.of(twoPlates("surface: '" + first + "',", "surface: '" + second + "',"));
    assertThat(sketch.plates()).extracting(PlateSketch::id).containsExactly("plate-1", "plate-2");
    assertThat(sketch.plates().get(0).azimuth()).isZero();
    assertThat(sketch.plates().get(1).azimuth()).isEqualTo(apart);
  }

  @Test
  void one_plate_needs_no_surface() {
    Sketch sketch = Sketches.of(CaseText.plated().without("/operations/0/fixation/0/surface"));
    assertThat(sketch.facing()).isEmpty();
    assertThat(Sketches.of(CaseText.plated()).facing()).contains(270.0);
  }

  @Test
  void the_bone_is_as_wide_and_long_as_told() {
    Sketch sketch = Sketches.of(CaseText.plated());
    assertThat(sketch.outer().middle()).isCloseTo(24, within(1e-9));
    assertThat(sketch.cortex().middle()).isCloseTo(7, within(1e-9));
    assertThat(sketch.proximal()).isEqualTo(180);
    assertThat(sketch.distal()).isEqualTo(180);
    assertThat(sketch.young()).isEqualTo(CorticalBone.moduli(Set.of(BoneGrade.GOOD)));
  }

  @Test
  void a_strut_counts_where_it_crosses_the_line() {
    String strut = "{kind: 'strut', id: 'strut-1', where: 'intramedullary', fromMm: %d, toMm: %d}";
    CaseText across = withStrut(String.format(strut, 140, 220));
    assertThat(Sketches.of(across).strut().orElseThrow().from().middle()).isEqualTo(-40);
    assertThat(Sketches.of(across).strut().orElseThrow().to().middle()).isEqualTo(40);
    assertThat(Sketches.of(withStrut(String.format(strut, 190, 250))).strut()).isEmpty();
    assertThat(Sketches.of(CaseText.plated()).strut()).isEmpty();
  }

  private static CaseText withStrut(String strut) {
    String plate = CaseText.plated().tree().at("/operations/0/fixation/0").toString();
    return holding(plate + ", " + strut);
  }
}
