package org.bonewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.junit.jupiter.api.Test;

/** A drawing shows what the file tells, and says where it tells nothing. */
class NothingInventedTest {

  private static final CaseFile FEMUR = CaseDrawings.read(CaseDrawings.DEMO);
  private static final CaseFile TIBIA =
      CaseDrawings.read(Path.of("cases/demo/tibia-minimum-set/case.json"));
  private static final CaseFile ULNA =
      CaseDrawings.read(Path.of("cases/demo/ulna-nineteen-years/case.json"));
  private static final CaseFile BOWED =
      CaseDrawings.read(Path.of("cases/published/femur-four-operations-bowed/case.json"));

  private static List<String> labels(CaseFile file, String subject, View view) {
    return CaseDrawings.marks(CaseDrawings.draw(file, subject, view).picture(), Mark.Label.class)
        .stream()
        .map(Mark.Label::text)
        .toList();
  }

  @Test
  void the_side_strip_names_no_surface_where_none_is_recorded() {
    assertThat(labels(TIBIA, "op-2", View.STRIP))
        .anyMatch(text -> text.contains("which surface is up is not recorded"))
        .noneMatch(text -> text.contains("lateral"));
    assertThat(labels(FEMUR, "op-2", View.STRIP))
        .anyMatch(text -> text.contains("lateral surface up"));
  }

  @Test
  void a_map_on_which_nothing_can_be_placed_does_not_pass_for_whole_bone() {
    String said = "That does not make the bone free.";
    assertThat(labels(TIBIA, "op-2", View.MAP)).contains(said);
    assertThat(labels(BOWED, "op-4", View.MAP)).contains(said);
    assertThat(labels(FEMUR, "op-2", View.MAP)).doesNotContain(said);
  }

  @Test
  void a_screw_of_unknown_direction_stands_below_the_map_with_the_range_of_its_level() {
    // Holes 1, 3, 4, 6 and 8 hold the screws of op-2; op-1 left four tracks.
    Picture map = CaseDrawings.draw(TIBIA, "op-2", View.MAP).picture();
    assertThat(CaseDrawings.thing(map, "plate-screw", "op-2/plate-1 hole 3").marks()).hasSize(1);
    assertThat(CaseDrawings.marks(map, Mark.Thing.class))
        .filteredOn(thing -> thing.kind().equals("old-track"))
        .hasSize(4);
    // A bar with two ends for each of the nine.
    assertThat(CaseDrawings.marks(map, Mark.Outline.class))
        .filteredOn(outline -> outline.ink().equals(Ink.WHISKER))
        .hasSizeGreaterThanOrEqualTo(27);
  }

  @Test
  void a_nail_of_unknown_level_has_no_tip() {
    Picture strip = CaseDrawings.draw(BOWED, "op-4", View.STRIP).picture();
    assertThat(CaseDrawings.thing(strip, "nail", "op-4/nail-1").marks().get(0))
        .isInstanceOf(Mark.Box.class);
  }

  @Test
  void a_plate_that_is_not_drawn_is_not_said_to_be_drawn_on_top() {
    assertThat(labels(BOWED, "op-4", View.STRIP))
        .anyMatch(text -> text.startsWith("Not drawn, level not known: op-4/plate-1"))
        .noneMatch(text -> text.contains("drawn on top"));
  }

  @Test
  void the_side_strip_tells_how_much_thread_an_old_track_leaves() {
    List<String> strip = labels(ULNA, "plan-a", View.STRIP);
    assertThat(strip).contains("4: 68 %");
    assertThat(strip).anyMatch(text -> text.contains("hole 4: 68 % of the thread left"));
    assertThat(labels(TIBIA, "op-2", View.STRIP)).contains("3: ?");
  }

  @Test
  void what_was_left_behind_is_named_in_full() {
    assertThat(labels(ULNA, "op-5", View.STRIP))
        .contains(
            "threaded end of the last pin, in the far cortex",
            "far part of the nail, in the canal from the line to its tip");
  }

  @Test
  void a_broken_plate_is_broken_on_the_map_too() {
    // Hole 4 of op-2 lies 3 × 16 mm beyond 217: 190 + 3 × 265 = 985 units.
    Mark.Thing crack =
        CaseDrawings.thing(
            CaseDrawings.draw(FEMUR, "op-2", View.MAP).picture(), "break", "op-2/plate-1");
    assertThat(((Mark.Outline) crack.marks().get(0)).points())
        .allMatch(point -> Math.abs(point.x() - 985) < 3);
  }
}
