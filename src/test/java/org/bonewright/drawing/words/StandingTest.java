package org.bonewright.drawing.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class StandingTest {

  /** Plated at 100 with 16 mm between holes; op-2 cuts 10 mm out at 160, closes it, keeps metal. */
  private static final CaseText CUT =
      CaseText.plated()
          .at(
              "/operations/0/fixation/0",
              "{holes: 6, lengthMm: 96, place: {zoneBetweenHoles: null, firstHoleMm: 100},"
                  + " screws: [{at: [1, 6], type: 'cortical', cortices: 2}]}")
          .with("{injury: {zone: {fromMm: 130, toMm: 132}}}");

  private static Standing standing(CaseText text, String id) {
    CaseFile file = text.file();
    Subject subject =
        Subject.of(file).stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
    return new Standing(new Scene(subject, EveryMeasure.catalogue()));
  }

  private static Standing now(CaseText text) {
    return new Standing(new Scene(Subject.now(text.file()), EveryMeasure.catalogue()));
  }

  private static CaseText withSecond(CaseText text, String operation) {
    CaseText both = CaseText.of(text.tree().toString());
    var root = both.tree();
    root.withArray("/operations").add(CaseText.of(operation).tree());
    return CaseText.of(root.toString());
  }

  @Test
  void a_plate_that_stays_comes_nearer_with_the_bone_that_was_cut_out_before_it() {
    CaseText text =
        withSecond(
            CUT,
            "{id: 'op-2', day: 90, fixation: [], removed: [],"
                + " resection: [{fromMm: 50, toMm: 60}], reduction: {gapNearMm: 0, gapFarMm: 0}}");
    Standing standing = standing(text, "op-2");
    Standing.Laid laid = standing.plates().get(0);

    // Hole 1 lay at 100, hole 6 at 180; 10 mm were cut out and closed before them.
    assertThat(standing.level(laid, 1).map(Dimension::middle)).contains(90.0);
    assertThat(standing.level(laid, 6).map(Dimension::middle)).contains(170.0);
    assertThat(laid.metal().own()).isFalse();
  }

  @Test
  void screws_taken_out_leave_empty_tracks() {
    CaseText text =
        withSecond(
            CUT,
            "{id: 'op-2', day: 90, fixation: [], resection: [],"
                + " removed: [{of: 'op-1/plate-1', holes: [6]}]}");

    InWords words = new InWords(standing(text, "op-2"));

    assertThat(words.oldTracks()).containsExactly("op-1/plate-1: hole 6 at 180 mm (medial)");
    assertThat(words.metal().get(0)).contains("screws in holes 1;").contains("open 2, 3, 4, 5, 6");
  }

  @Test
  void metal_without_a_level_is_named_and_gets_none() {
    CaseText text = CaseText.nailed().at("/operations/0/fixation/0/bolts/2", "{atMm: null}");

    assertThat(new InWords(standing(text, "op-1")).unplaced())
        .containsExactly("op-1/nail-1 bolt 3");
  }

  @Test
  void levels_are_counted_from_the_zone_where_none_is_recorded() {
    CaseText text =
        CaseText.plated().with("{injury: {zone: {fromMm: null, toMm: null, lengthMm: 2}}}");
    Standing standing = standing(text, "op-1");

    // Holes 5 and 6 lie 16 mm apart either side of the zone: 8 mm before and after its middle.
    assertThat(standing.levels().fromLandmark()).isFalse();
    assertThat(standing.level(standing.plates().get(0), 5).map(Dimension::middle)).contains(-8.0);
    assertThat(FreeBone.of(standing, List.of()).unknown()).contains("no level is recorded");
  }

  @Test
  void the_upper_surface_of_a_clavicle_has_its_name() {
    Standing clavicle = now(CaseText.bare().with("{bone: {name: 'clavicle'}}"));

    assertThat(clavicle.surfaces().name(new Direction(90))).isEqualTo("superior");
    assertThat(clavicle.surfaces().name(new Direction(225))).isEqualTo("posteroinferior");
    assertThat(now(CaseText.bare()).surfaces().name(new Direction(90))).isEqualTo("lateral");
  }

  @Nested
  class Free_bone {

    @Test
    void is_looked_for_on_either_side_of_the_zone_with_the_screws_of_the_plate() {
      // Before op-1 nothing was drilled. The zone is 179 to 181; half a screw of 4.5 mm keeps off:
      // from 2.25 (2.5 in steps of a half) to 176.75 (176.5), and from 183.25 (183.5) to 357.75.
      CaseFile file = CaseText.plated().file();
      Subject first = Subject.of(file).get(0);
      Standing before = new Standing(new Scene(first.justBefore(), EveryMeasure.catalogue()));

      FreeBone free = FreeBone.of(before, first.steps());

      assertThat(free.family()).isEqualTo(Plate.Family.LARGE_FRAGMENT_NARROW);
      assertThat(new FreeText(free, before).on(new Direction(90)))
          .isEqualTo("lateral: 3–176, 184–357 mm free");
    }

    @Test
    void is_not_known_where_an_earlier_operation_does_not_tell_its_screws() {
      Standing standing = now(CaseText.plated().at("/operations/0/fixation/0", "{screws: null}"));

      assertThat(FreeBone.of(standing, List.of()).unknown())
          .contains("the file does not tell every earlier screw with its level");
    }

    @Test
    void takes_the_family_of_the_plan_before_that_of_what_was_done() {
      CaseText text =
          CaseText.plated()
              .redone("plate-bent")
              .at("/plans/0/stages/0/fixation/0", "{family: 'small-fragment'}");

      assertThat(FreeBone.of(now(text), List.of()).family()).isEqualTo(Plate.Family.SMALL_FRAGMENT);
    }
  }
}
