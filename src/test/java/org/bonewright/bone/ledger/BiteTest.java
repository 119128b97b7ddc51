package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/** An old medial screw of 4.5 mm at 108 mm in a tibia of 24 mm, and a new one. */
class BiteTest {

  private static Bite bite(String old, String fresh, String surface) {
    CaseText text =
        CaseText.plated()
            .with(
                "{bone: {sections: [{atMm: 60, outerMm: 24, canalMm: 10}, {atMm: 300, outerMm: 24, canalMm: 10}]}}")
            .at(
                "/operations/0/fixation/0",
                "{place: {firstHoleMm: 108}, screws: [{at: [1], diameterMm: 4.5, " + old + "}]}")
            .redone("plate-bent")
            .at(
                "/plans/0/stages/0/fixation/0",
                "{surface: '"
                    + surface
                    + "', screws: [{at: [1], diameterMm: 4.5, "
                    + fresh
                    + "}]}");
    Subject plan = Subject.of(text.file()).get(2);
    List<Bite> bites = new Scene(plan, Taken.CATALOGUE).ledger().bites(1);
    return bites.get(0);
  }

  @Test
  void the_same_axis_from_either_side_is_the_old_hole_again() {
    String both = "type: 'cortical', cortices: 2";
    assertThat(bite(both, both, "medial").contact()).isEqualTo(Bite.Contact.REUSED);
    assertThat(bite(both, both, "lateral").contact()).isEqualTo(Bite.Contact.REUSED);
  }

  @Test
  void an_old_screw_that_may_have_ended_in_the_near_cortex_may_not_meet_one_from_the_other_side() {
    Bite bite = bite("type: 'locking'", "type: 'cortical', cortices: 1", "lateral");
    assertThat(bite.contact()).isEqualTo(Bite.Contact.UNSURE);
    // at worst the same hole; at best 24 mm across the bone
    assertThat(bite.clearance().orElseThrow().min()).isEqualTo(-4.5);
    assertThat(bite.clearance().orElseThrow().max()).isEqualTo(24 - 4.5);
  }

  @Test
  void an_old_screw_that_ended_in_the_near_cortex_leaves_the_other_side_fresh() {
    Bite bite = bite("type: 'locking', cortices: 1", "type: 'cortical', cortices: 1", "lateral");
    assertThat(bite.contact()).isEqualTo(Bite.Contact.FRESH);
  }

  /** Fresh bone is no old hole; how far the next one lies it does not say. */
  @Test
  void a_screw_said_to_bite_fresh_bone_may_lie_close_to_a_hole_of_unknown_level() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/operations/0", "{fixation: null}")
            .at(
                "/plans/0/stages/0/fixation/0",
                "{screws: [{at: [1], type: 'cortical', track: 'fresh'}]}");
    Bite bite = new Scene(Subject.of(text.file()).get(2), Taken.CATALOGUE).ledger().bites(1).get(0);
    assertThat(bite.contact()).isEqualTo(Bite.Contact.UNSURE);
    assertThat(bite.near().min()).isEqualTo(1);
  }

  @Test
  void tracks_that_meet_at_one_cortex_alone_overlap() {
    // entered at the same place, 30 degrees apart: 24 x tan 30 = 13.9 mm apart on the far side
    Bite bite =
        bite(
            "type: 'cortical', cortices: 2",
            "type: 'cortical', cortices: 2, tiltDeg: 30",
            "medial");
    assertThat(bite.contact()).isEqualTo(Bite.Contact.OVERLAPPED);
  }
}
