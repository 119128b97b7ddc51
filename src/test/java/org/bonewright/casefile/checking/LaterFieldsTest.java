package org.bonewright.casefile.checking;

import static org.bonewright.casefile.checking.Limits.OP_1;
import static org.bonewright.casefile.checking.Limits.OP_3;
import static org.bonewright.casefile.checking.Limits.PLATE;
import static org.bonewright.casefile.checking.Limits.assertObjections;
import static org.bonewright.casefile.checking.Limits.assertSound;

import org.junit.jupiter.api.Test;

/** What is accepted, and what is not, about pieces, tips, compression, cerclages and transport. */
class LaterFieldsTest {

  private static final String PIECES = "/plans/0/stages/0/pieces";

  private static String decision(String of, String what) {
    return "[{\"of\": \"" + of + "\", \"decision\": \"" + what + "\"}]";
  }

  @Test
  void pieces_are_decided_about_by_name_or_by_their_place() {
    Altered named = Altered.plateHistory().with(OP_3 + "/removed/0/left/0/id", "\"tip\"");
    assertSound(named.with(PIECES, decision("op-3/tip", "removed")));
    assertSound(Altered.plateHistory().with(PIECES, decision("op-3/piece-1", "stays")));
    assertObjections(Altered.plateHistory().with(PIECES, decision("op-3/piece-2", "stays")))
        .containsExactly("error " + PIECES + "/0/of");
    assertObjections(named.with(OP_3 + "/pieces", decision("op-3/tip", "stays")))
        .containsExactly("error " + OP_3 + "/pieces/0/of");
  }

  @Test
  void pieces_may_stay_twice_and_come_out_once() {
    String again = "/plans/0/stages/1/pieces";
    Altered stays = Altered.plateHistory().with(PIECES, decision("op-3/piece-1", "stays"));
    assertSound(stays.with(again, decision("op-3/piece-1", "removed")));
    Altered out = Altered.plateHistory().with(PIECES, decision("op-3/piece-1", "removed"));
    assertObjections(out.with(again, decision("op-3/piece-1", "stays")))
        .containsExactly("error " + again + "/0/of");
    // each plan for itself
    assertSound(out.with("/plans/1/stages/0/pieces", decision("op-3/piece-1", "removed")));
    assertObjections(Altered.plateHistory().with(PIECES, decision("b-1/piece-1", "stays")))
        .containsExactly("error " + PIECES + "/0/of");
  }

  @Test
  void implants_decided_about_are_in_the_bone() {
    assertSound(Altered.plateHistory().with(OP_3 + "/pieces", decision("op-1/lag-1", "stays")));
    assertSound(Altered.plateHistory().with(PIECES, decision("op-3/plate-1", "removed")));
    Altered out = Altered.plateHistory().with(OP_3 + "/pieces", decision("op-1/lag-1", "removed"));
    assertObjections(out).containsExactly("error /plans/0/stages/0/removed/2/of");
    assertObjections(
            Altered.plateHistory().with(OP_1 + "/pieces", decision("op-3/plate-1", "stays")))
        .containsExactly("error " + OP_1 + "/pieces/0/of");
  }

  @Test
  void tips_short_of_the_far_cortex_go_with_one_cortex() {
    String row = PLATE + "/screws/0";
    Altered two = Altered.minimal().with(row + "/cortices", "2");
    assertSound(two.with(row + "/tipBeyondMm", "0"));
    assertSound(two.with(row + "/tipBeyondMm", "{\"min\": -3, \"max\": 0}"));
    assertSound(two.with(row + "/cortices", "1").with(row + "/tipBeyondMm", "-1"));
    assertSound(Altered.minimal().with(row + "/tipBeyondMm", "-1"));
    assertObjections(two.with(row + "/tipBeyondMm", "-0.5"))
        .containsExactly("error " + row + "/tipBeyondMm");
  }

  @Test
  void compression_may_be_none_with_a_bent_plate() {
    String compression = OP_1 + "/compression";
    assertSound(
        Altered.minimal().with(compression, "{\"method\": \"none\", \"prebent\": \"yes\"}"));
    assertSound(
        Altered.minimal()
            .with(
                compression,
                "{\"method\": \"none\", \"screws\": 0, \"gapBeforeMm\": 0, \"prebendMm\": 1}"));
    assertSound(
        Altered.minimal()
            .with(compression, "{\"method\": \"clamp\", \"screws\": 2, \"gapBeforeMm\": 3}"));
    assertSound(
        Altered.minimal()
            .with(compression, "{\"method\": \"clamp\", \"prebent\": \"no\", \"prebendMm\": 0}"));
  }

  @Test
  void cerclages_hold_a_strut_that_lies_on_the_bone() {
    String wire = "{\"id\": \"w\", \"kind\": \"cerclage\", \"atMm\": [], \"holds\": \"strut\"}";
    String strut =
        "{\"id\": \"s\", \"kind\": \"strut\", \"where\": \"%s\", \"fromMm\": 100, \"toMm\": 150}";
    Altered withWire = Altered.minimal().with(OP_1 + "/fixation/-", wire);
    String holds = OP_1 + "/fixation/1/holds";
    assertObjections(withWire).containsExactly("error " + holds);
    assertSound(withWire.with(OP_1 + "/fixation/-", String.format(strut, "onlay")));
    assertObjections(withWire.with(OP_1 + "/fixation/-", String.format(strut, "intramedullary")))
        .containsExactly("error " + holds);
    assertSound(withWire.with(holds, "\"wedge\""));
  }

  @Test
  void transport_goes_along_a_fixator_or_a_nail() {
    assertSound(Altered.nailAndFixator().with(OP_1 + "/transport", "{}"));
    assertSound(Altered.nailAndFixator().with("/operations/1/transport", "{}"));
    assertObjections(Altered.minimal().with(OP_1 + "/transport", "{}"))
        .containsExactly("error " + OP_1 + "/transport");
    assertSound(Altered.minimal().without(OP_1 + "/fixation").with(OP_1 + "/transport", "{}"));
  }

  @Test
  void plates_stand_off_the_bone_by_ten_millimetres_at_most() {
    assertSound(Altered.minimal().with(PLATE + "/standOffMm", "10"));
    assertSound(Altered.minimal().with(PLATE + "/standOffMm", "{\"min\": 5, \"max\": 15}"));
    assertObjections(Altered.minimal().with(PLATE + "/standOffMm", "10.5"))
        .containsExactly("warning " + PLATE + "/standOffMm");
  }
}
