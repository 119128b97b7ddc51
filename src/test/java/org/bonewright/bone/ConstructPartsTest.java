package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.bone.Construct.Held;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Pin;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;
import org.junit.jupiter.api.Test;

/** What is left once single screws, bolts or pins came out, or a decision was taken about them. */
class ConstructPartsTest {

  private static final String PLATE =
      "{id: 'plate-1', kind: 'plate', screws: [{at: [1, 2, 3, 4], type: 'cortical'}]}";
  private static final String NAIL =
      "{id: 'nail-1', kind: 'nail', bolts: [{end: 'near', atMm: 40}, {end: 'far', atMm: 300},"
          + " {end: 'far', atMm: 320}]}";
  private static final String FRAME =
      "{id: 'frame', kind: 'external-fixator', pins: [{atMm: 60}, {atMm: 80}, {atMm: 300}]}";

  private static Construct after(String... operations) {
    StringBuilder list = new StringBuilder();
    for (int i = 0; i < operations.length; i++) {
      list.append(i == 0 ? "" : ", ").append("{id: 'op-" + (i + 1) + "', " + operations[i] + "}");
    }
    return Construct.after(
        CaseText.bare().with("{operations: [" + list + "]}").file().operations());
  }

  private static String put(String... implants) {
    return "fixation: [" + String.join(", ", implants) + "]";
  }

  private static String takes(String of, String parts) {
    return "fixation: [], removed: [{of: '" + of + "', " + parts + "}]";
  }

  private static List<Integer> holes(Plate plate) {
    return plate.screws().orElseThrow().stream().map(ScrewRow::at).flatMap(List::stream).toList();
  }

  @Test
  void a_nail_is_left_without_the_bolts_that_came_out_and_keeps_the_numbers_of_the_rest() {
    Construct left =
        after(put(NAIL), takes("op-1/nail-1", "bolts: [1]"), takes("op-1/nail-1", "bolts: [2]"));
    assertThat(left.of(Nail.class).get(0).bolts().orElseThrow())
        .extracting(Bolt::atMm)
        .extracting(at -> at.orElseThrow().min())
        .containsExactly(320.0);
  }

  @Test
  void a_fixator_is_left_without_the_pins_that_came_out() {
    Construct left = after(put(FRAME), takes("op-1/frame", "pins: [1, 3]"));
    assertThat(left.of(ExternalFixator.class).get(0).pins().orElseThrow())
        .extracting(Pin::atMm)
        .extracting(at -> at.min())
        .containsExactly(80.0);
  }

  @Test
  void screws_that_came_out_one_operation_after_another_are_all_out() {
    Construct left =
        after(put(PLATE), takes("op-1/plate-1", "holes: [2]"), takes("op-1/plate-1", "holes: [4]"));
    assertThat(holes(left.of(Plate.class).get(0))).containsExactly(1, 3);
  }

  @Test
  void screws_come_out_of_the_plate_that_is_named_and_of_no_other() {
    String other = PLATE.replace("'plate-1'", "'plate-2'").replace("[1, 2, 3, 4]", "[1, 2, 9]");
    Construct left =
        after(
            put(PLATE, other),
            put(PLATE.replace("[1, 2, 3, 4]", "[5, 6]")) + ", removed: []",
            takes("op-1/plate-2", "holes: [2]"),
            takes("op-2/plate-1", "holes: [5]"),
            takes("op-1/plate-1", "holes: [1]"));
    assertThat(left.implants())
        .extracting(Held::path)
        .containsExactly("op-1/plate-1", "op-1/plate-2", "op-2/plate-1");
    assertThat(left.of(Plate.class).stream().map(ConstructPartsTest::holes))
        .containsExactly(List.of(2, 3, 4), List.of(1, 9), List.of(6));
  }

  @Test
  void an_implant_stays_or_comes_out_as_is_decided_about_it() {
    String second = put(PLATE.replace("'plate-1'", "'plate-2'"));
    String decision = ", pieces: [{of: 'op-1/plate-1', decision: '%s'}]";
    assertThat(after(put(PLATE), second + decision.formatted("stays")).implants())
        .extracting(Held::path)
        .containsExactly("op-1/plate-1", "op-2/plate-2");
    assertThat(after(put(PLATE), "fixation: []" + decision.formatted("removed")).implants())
        .isEmpty();
    assertThat(after(put(PLATE), "fixation: []" + decision.formatted("stays")).implants())
        .extracting(Held::path)
        .containsExactly("op-1/plate-1");
  }
}
