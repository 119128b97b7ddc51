package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.bone.ledger.Histories.FRAME;
import static org.bonewright.bone.ledger.Histories.NAIL;
import static org.bonewright.bone.ledger.Histories.PLATE;
import static org.bonewright.bone.ledger.Histories.ledger;
import static org.bonewright.bone.ledger.Histories.metal;
import static org.bonewright.bone.ledger.Histories.plate;
import static org.bonewright.bone.ledger.Histories.put;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies in the bone, and which tracks it fills. */
class LedgerMetalTest {

  private static List<String> filled(Ledger ledger, int round) {
    return ledger.foundBy(round).stream()
        .filter(OldTrack::filled)
        .map(old -> old.track().name())
        .toList();
  }

  @Test
  void single_screws_bolts_and_pins_leave_their_tracks_empty() {
    Ledger ledger =
        ledger(
            put(PLATE, NAIL, FRAME),
            "fixation: [], removed: [{of: 'op-1/plate-1', holes: [1]},"
                + " {of: 'op-1/nail-1', bolts: [2]}, {of: 'op-1/frame', pins: [1, 3]}]",
            "title: 'x'");
    assertThat(filled(ledger, 1)).hasSize(8);
    assertThat(filled(ledger, 2))
        .containsExactly(
            "op-1/plate-1 hole 2", "op-1/nail-1 bolt 1", "op-1/nail-1 bolt 3", "op-1/frame pin 2");
    assertThat(ledger.foundBy(2)).hasSize(8);
  }

  @Test
  void bolts_taken_out_one_operation_after_another_keep_their_numbers() {
    Ledger ledger =
        ledger(
            put(NAIL),
            "fixation: [], removed: [{of: 'op-1/nail-1', bolts: [1]}]",
            "fixation: [], removed: [{of: 'op-1/nail-1', bolts: [2]}]",
            "title: 'x'");
    assertThat(filled(ledger, 3)).containsExactly("op-1/nail-1 bolt 3");
  }

  @Test
  void an_implant_removed_leaves_all_its_tracks_empty() {
    Ledger ledger =
        ledger(put(PLATE, FRAME), "fixation: [], removed: [{of: 'op-1/plate-1'}]", "title: 'x'");
    assertThat(filled(ledger, 2)).allMatch(name -> name.startsWith("op-1/frame"));
    assertThat(metal(ledger.metalFoundBy(1))).containsExactly("op-1/plate-1", "op-1/frame");
    assertThat(metal(ledger.metalAfter(1))).containsExactly("op-1/frame");
  }

  @Test
  void new_screws_meet_what_their_own_operation_has_emptied() {
    Ledger ledger = ledger(put(PLATE), put(plate("plate-2", "{firstHoleMm: 90}")));
    assertThat(filled(ledger, 1)).hasSize(2);
    assertThat(ledger.metBy(1)).hasSize(2).noneMatch(OldTrack::filled);
  }

  @Test
  void a_new_main_implant_replaces_the_old_unless_the_file_says_that_it_stays() {
    String second = put(plate("plate-2", "{firstHoleMm: 200}"));
    assertThat(metal(ledger(put(PLATE), second).metalAfter(1))).containsExactly("op-2/plate-2");
    assertThat(metal(ledger(put(PLATE), second + ", removed: []").metalAfter(1)))
        .containsExactly("op-1/plate-1", "op-2/plate-2");
    String stays = ", pieces: [{of: 'op-1/plate-1', decision: 'stays'}]";
    assertThat(metal(ledger(put(PLATE), second + stays).metalAfter(1)))
        .containsExactly("op-1/plate-1", "op-2/plate-2");
    assertThat(metal(ledger(put(PLATE), put()).metalAfter(1))).containsExactly("op-1/plate-1");
  }

  @Test
  void pieces_stay_until_a_decision_takes_them_out() {
    String leaves =
        "fixation: [], removed: [{of: 'op-1/plate-1', left:"
            + " [{id: 'tip', piece: 'tip of a screw', atMm: 190}, {piece: 'screw 2'}]}]";
    Ledger ledger =
        ledger(
            put(PLATE, FRAME),
            leaves,
            "fixation: [], pieces: [{of: 'op-2/tip', decision: 'removed'},"
                + " {of: 'op-2/piece-2', decision: 'stays'}]",
            "fixation: [], pieces: [{of: 'op-1/frame', decision: 'removed'}]",
            "title: 'x'");
    assertThat(metal(ledger.metalAfter(1)))
        .containsExactly("op-1/frame", "op-2/tip", "op-2/piece-2");
    assertThat(ledger.metalAfter(1).get(1).level().orElseThrow().min()).isEqualTo(190);
    assertThat(metal(ledger.metalAfter(2))).containsExactly("op-1/frame", "op-2/piece-2");
    assertThat(metal(ledger.metalAfter(3))).containsExactly("op-2/piece-2");
    assertThat(filled(ledger, 4)).isEmpty();
  }
}
