package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bonewright.bone.BoneGrade;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Bite.Contact;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.ScrewRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screws of 4.5 mm in a bone of 24 mm with a canal of 14; one new one at 100 mm, from in front. */
class ContactTest {

  private static final BoneShape BONE =
      new BoneShape(
          CaseText.plated()
              .at(
                  "/bone",
                  "{sections: [{atMm: 10, outerMm: 24, canalMm: 14},"
                      + " {atMm: 350, outerMm: 24, canalMm: 14}]}")
              .file()
              .bone(),
          Optional.empty(),
          Set.of(BoneGrade.GOOD));

  private static Bite bite(Drill screw, Drill... older) {
    return bite(screw, Optional.empty(), true, older);
  }

  private static Bite bite(
      Drill screw, Optional<ScrewRow.Track> stated, boolean allTold, Drill... older) {
    List<OldTrack> old = Stream.of(older).map(Drill::old).toList();
    return new BiteMaker(screw.track(), stated, old, allTold, BONE, true).bite();
  }

  @ParameterizedTest(name = "old track at {0} to {1} mm: {2}")
  @CsvSource({
    // edge to edge = distance less 4.5; the border of NEAR is one diameter of bone
    "109, 109, FRESH",
    "108.9, 108.9, NEAR",
    "91.1, 91.1, NEAR",
    "91, 91, FRESH",
    "104.5, 104.5, NEAR",
    "104.4, 104.4, OVERLAPPED",
    "100.6, 100.6, OVERLAPPED",
    "100.5, 100.5, REUSED",
    "99.5, 99.5, REUSED",
    "100, 100, REUSED",
    // ranges: certain, or unsure
    "109, 120, FRESH",
    "108.9, 120, UNSURE",
    "104.5, 108, NEAR",
    "104.4, 108, UNSURE",
    "101, 104, OVERLAPPED",
    "100.4, 104, UNSURE",
    "99.6, 100.4, REUSED",
    "99.6, 100.6, UNSURE"
  })
  void stands_to_a_track_on_its_own_side_as_its_level_says(double from, double to, Contact word) {
    Drill screw = Drill.at(100, 0);
    assertThat(bite(screw, Drill.at(0, 0).level(from, to)).contact()).isEqualTo(word);
    assertThat(bite(screw, Drill.at(0, 180).level(from, to)).contact()).isEqualTo(word);
  }

  @ParameterizedTest(name = "{0} degrees round: {1} mm, {2}")
  @CsvSource({
    // 24 x sin(angle / 2) - 4.5
    "90, 12.4706, FRESH",
    "45, 4.6844, FRESH",
    "44, 4.4906, NEAR",
    "22, 0.0794, NEAR",
    "21, -0.1264, OVERLAPPED",
    "2, -4.0811, REUSED",
    "3, -3.8717, OVERLAPPED",
    // the exit of the one beside the entry of the other
    "136, 4.4906, NEAR",
    "201, -0.1264, OVERLAPPED"
  })
  void stands_to_a_track_at_its_level_as_the_angle_says(double turn, double mm, Contact word) {
    Bite bite = bite(Drill.at(100, 0), Drill.at(100, turn));
    assertThat(bite.clearance().orElseThrow().min()).isCloseTo(mm, within(0.0001));
    assertThat(bite.clearance().orElseThrow().max()).isCloseTo(mm, within(0.0001));
    assertThat(bite.contact()).isEqualTo(word);
  }

  @Test
  void the_border_of_near_is_one_diameter_of_the_thicker_screw() {
    // 6.5 and 4.5: edge to edge = distance - 5.5
    assertThat(bite(Drill.at(100, 0), Drill.at(112, 0).thick(6.5)).contact())
        .isEqualTo(Contact.FRESH);
    assertThat(bite(Drill.at(100, 0), Drill.at(111.9, 0).thick(6.5)).contact())
        .isEqualTo(Contact.NEAR);
    // 2.7 to 6.5 mm: 5 to 6.9 mm of bone, against 4.5 to 6.5
    assertThat(bite(Drill.at(100, 0), Drill.at(110.5, 0).thick(2.7, 6.5)).contact())
        .isEqualTo(Contact.UNSURE);
  }

  @Test
  void keeps_clear_of_the_far_end_of_a_tilted_track() {
    // enters at 75.94, leaves 24 tan 45 = 24 mm farther, at 99.94 on the other side
    Drill old = Drill.at(75.94, 180).tilted(45);
    Bite bite = bite(Drill.at(100, 0), old);
    assertThat(bite.clearance().orElseThrow().min()).isCloseTo(0.06 - 4.5, within(0.0001));
    assertThat(bite.contact()).isEqualTo(Contact.OVERLAPPED);
    assertThat(bite.far().orElseThrow().min()).isEqualTo(1);
    assertThat(bite.near().max()).isLessThan(0.9);
  }

  @Test
  void one_opening_in_common_is_no_hole_used_again() {
    // same entry; the exits are 24 tan 20 = 8.7 mm apart
    assertThat(bite(Drill.at(100, 0).tilted(20), Drill.at(100, 0)).contact())
        .isEqualTo(Contact.OVERLAPPED);
  }

  @Test
  void a_track_in_one_cortex_used_again_leaves_a_longer_screw_the_other_one() {
    Drill one = Drill.at(100, 0).reaching(Track.Reach.NEAR_CORTEX);
    Bite longer = bite(Drill.at(100, 0), one);
    assertThat(longer.contact()).isEqualTo(Contact.REUSED);
    assertThat(longer.near().max()).isCloseTo(0, within(1e-9));
    assertThat(longer.far().orElseThrow().min()).isEqualTo(1);
    assertThat(bite(one, one).contact()).isEqualTo(Contact.REUSED);
    assertThat(bite(one, Drill.at(100, 0)).contact()).isEqualTo(Contact.REUSED);
    assertThat(bite(one, one).far()).isEmpty();
  }

  @Test
  void a_track_in_one_cortex_keeps_clear_of_a_screw_from_the_other_side_in_one() {
    Drill one = Drill.at(100, 180).reaching(Track.Reach.NEAR_CORTEX);
    Bite bite = bite(Drill.at(100, 0).reaching(Track.Reach.NEAR_CORTEX), one);
    // straight across: 24 - 4.5
    assertThat(bite.clearance().orElseThrow().max()).isCloseTo(19.5, within(0.0001));
    assertThat(bite.contact()).isEqualTo(Contact.FRESH);
    assertThat(bite.near().min()).isEqualTo(1);
  }

  @Test
  void a_track_in_one_cortex_or_both_leaves_the_other_side_open() {
    Drill unsure = Drill.at(100, 180).reaching(Track.Reach.UNSURE);
    Bite bite = bite(Drill.at(100, 0).reaching(Track.Reach.NEAR_CORTEX), unsure);
    assertThat(bite.contact()).isEqualTo(Contact.UNSURE);
    assertThat(bite.clearance().orElseThrow().min()).isCloseTo(-4.5, within(0.0001));
    assertThat(bite.clearance().orElseThrow().max()).isCloseTo(19.5, within(0.0001));
  }

  @Test
  void what_the_file_says_comes_first_within_what_films_can_err() {
    Drill screw = Drill.at(100, 0);
    // 4 between the middles, less 4.5: half a millimetre too near
    Bite fresh = bite(screw, Optional.of(ScrewRow.Track.FRESH), true, Drill.at(104, 0));
    assertThat(fresh.contact()).isEqualTo(Contact.NEAR);
    assertThat(fresh.near()).extracting(Dimension::min, Dimension::max).containsExactly(1.0, 1.0);
    Bite inTheHole = bite(screw, Optional.of(ScrewRow.Track.FRESH), true, Drill.at(101, 0));
    assertThat(inTheHole.contact()).isEqualTo(Contact.OVERLAPPED);
    assertThat(inTheHole.near().max()).isLessThan(0.5);
    Bite old = bite(screw, Optional.of(ScrewRow.Track.OLD_HOLE), true, Drill.at(130, 0));
    assertThat(old.contact()).isEqualTo(Contact.REUSED);
  }

  @Test
  void nothing_is_certain_while_some_track_is_not_told() {
    Bite alone = bite(Drill.at(100, 0), Optional.empty(), false);
    assertThat(alone.contact()).isEqualTo(Contact.UNSURE);
    assertThat(alone.clearance()).isEmpty();
    assertThat(alone.near()).extracting(Dimension::min, Dimension::max).containsExactly(0.0, 1.0);
    Bite far = bite(Drill.at(100, 0), Optional.empty(), false, Drill.at(150, 0));
    assertThat(far.contact()).isEqualTo(Contact.UNSURE);
    assertThat(far.clearance().orElseThrow().min()).isNegative();
    assertThat(far.clearance().orElseThrow().max()).isCloseTo(45.5, within(0.0001));
    assertThat(bite(Drill.at(100, 0), Optional.empty(), false, Drill.at(100, 0)).contact())
        .isEqualTo(Contact.REUSED);
    assertThat(bite(Drill.at(100, 0)).contact()).isEqualTo(Contact.FRESH);
  }

  @Test
  void a_track_that_may_be_gone_is_neither_met_nor_missed_for_certain() {
    Bite bite = bite(Drill.at(100, 0), Drill.at(100, 0).perhapsGone());
    assertThat(bite.contact()).isEqualTo(Contact.UNSURE);
    assertThat(bite.near()).extracting(Dimension::min, Dimension::max).containsExactly(0.0, 1.0);
    assertThat(bite(Drill.at(100, 0), Drill.at(102, 0).perhapsGone()).contact())
        .isEqualTo(Contact.UNSURE);
  }

  @Test
  void the_step_is_taken_from_the_thickest_track_of_the_same_hole() {
    Drill screw = Drill.at(100, 0).thread(5.0, 3.5);
    assertThat(step(bite(screw, Drill.at(100, 0).thick(3.5)))).containsExactly(1.5, 1.5);
    assertThat(step(bite(screw, Drill.at(100, 0).thick(3.5), Drill.at(100.2, 180))))
        .containsExactly(0.5, 0.5);
    // a thick neighbour that only overlaps is not the hole used again
    assertThat(step(bite(screw, Drill.at(100, 0).thick(3.5), Drill.at(100.7, 0).thick(6.5))))
        .containsExactly(1.5, 1.5);
    assertThat(step(bite(screw, Drill.at(0, 0).level(99.8, 101).thick(4.0, 4.5))))
        .containsExactly(0.5, 1.0);
    assertThat(bite(screw, Drill.at(103, 0)).stepUp()).isEmpty();
  }

  private static List<Double> step(Bite bite) {
    Dimension step = bite.stepUp().orElseThrow();
    return List.of(step.min(), step.max());
  }

  @Test
  void names_what_is_nearer_than_a_diameter_nearest_first() {
    List<OldTrack> old =
        List.of(
            Drill.at(120, 0).old("far"), Drill.at(106, 0).old("six"), Drill.at(97, 0).old("three"));
    Bite bite =
        new BiteMaker(Drill.at(100, 0).track(), Optional.empty(), old, true, BONE, true).bite();
    assertThat(bite.closest()).containsExactly("three", "six");
    assertThat(bite.clearance().orElseThrow().min()).isCloseTo(-1.5, within(0.0001));
  }
}
