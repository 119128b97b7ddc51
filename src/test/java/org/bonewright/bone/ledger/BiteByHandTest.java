package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;

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

/** A new screw of 4.5 mm at 100 mm from in front; what of its answer is a range or assumed. */
class BiteByHandTest {

  private static final Drill SCREW = Drill.at(100, 0);

  /** 24 mm thick; a canal of 14 mm in the middle, of {@code ends} mm near both ends. */
  private static BoneShape bone(int ends) {
    String section = "{atMm: %d, outerMm: 24, canalMm: %d}";
    List<String> sections =
        List.of(
            section.formatted(10, ends),
            section.formatted(80, 14),
            section.formatted(280, 14),
            section.formatted(350, ends));
    return new BoneShape(
        CaseText.plated()
            .at("/bone", "{sections: [" + String.join(", ", sections) + "]}")
            .file()
            .bone(),
        Optional.empty(),
        Set.of(BoneGrade.GOOD));
  }

  private static Bite bite(boolean allTold, Drill... older) {
    return bite(SCREW, Optional.empty(), allTold, older);
  }

  private static Bite bite(
      Drill screw, Optional<ScrewRow.Track> stated, boolean allTold, Drill... older) {
    List<OldTrack> old = Stream.of(older).map(Drill::old).toList();
    return new BiteMaker(screw.track(), stated, old, allTold, bone(14), true).bite();
  }

  private static Drill assumed(Drill drill) {
    return new Drill(
        drill.level(),
        drill.direction(),
        drill.tilt(),
        Dimension.assumed(drill.diameter().min(), drill.diameter().max(), ""),
        drill.core(),
        drill.reach(),
        drill.mayBeGone());
  }

  private static String told(Optional<Dimension> range) {
    return range.map(r -> r.numbers() + (r.assumed() ? " assumed" : "")).orElse("none");
  }

  @Test
  void a_track_that_may_be_gone_is_no_bound_for_the_bone_that_is_left() {
    Drill gone = Drill.at(102, 0).perhapsGone();
    // 2 mm less 4.5 at worst; the next that is certainly there is 30 mm away
    assertThat(told(bite(true, gone, Drill.at(130, 0)).clearance())).isEqualTo("-2.5 to 25.5");
    // where all may be gone, the farthest of them: 10 less 4.5
    assertThat(told(bite(true, gone, Drill.at(110, 0).perhapsGone()).clearance()))
        .isEqualTo("-2.5 to 5.5");
  }

  @Test
  void a_track_of_unknown_place_may_be_the_thickest_screw_in_the_same_spot() {
    // half of 4.5 and 6.5 mm
    assertThat(told(bite(false, Drill.at(150, 0)).clearance())).isEqualTo("-5.5 to 45.5 assumed");
    // one that is known may lie nearer still: 0.5 less (4.5 + 10) / 2
    assertThat(told(bite(false, Drill.at(100.5, 0).thick(10)).clearance()))
        .isEqualTo("-6.75 assumed");
  }

  @Test
  void clearance_is_assumed_where_a_track_is_from_an_unknown_side() {
    assertThat(told(bite(true, Drill.at(150, 0)).clearance())).isEqualTo("45.5");
    Drill somewhere = Drill.at(150, 0).fromSomewhere();
    assertThat(bite(true, somewhere).clearance().orElseThrow().assumed()).isTrue();
    assertThat(bite(true, Drill.at(130, 0), somewhere).clearance().orElseThrow().assumed())
        .isTrue();
  }

  @Test
  void only_tracks_nearer_than_a_diameter_are_named() {
    // 9 mm apart leave 4.5 mm of bone, a whole diameter
    assertThat(bite(true, Drill.at(109, 0)).closest()).isEmpty();
    assertThat(bite(true, Drill.at(108.9, 0)).closest()).containsExactly("old");
  }

  @Test
  void fresh_bone_that_is_stated_counts_up_to_what_a_film_may_err() {
    Optional<ScrewRow.Track> fresh = Optional.of(ScrewRow.Track.FRESH);
    // 3.5 mm apart: an overlap of exactly a millimetre; then a little more
    assertThat(bite(SCREW, fresh, true, Drill.at(103.5, 0)).contact()).isEqualTo(Contact.NEAR);
    assertThat(bite(SCREW, fresh, true, Drill.at(103.4, 0)).contact())
        .isEqualTo(Contact.OVERLAPPED);
  }

  @Test
  void the_step_is_told_where_the_hole_is_used_again_by_the_words_of_the_file_alone() {
    Optional<ScrewRow.Track> larger = Optional.of(ScrewRow.Track.OLD_HOLE_LARGER);
    Drill thick = SCREW.thread(5.5, 4);
    // of two that lie elsewhere the nearer one is meant
    Bite said = bite(thick, larger, true, Drill.at(150, 0), Drill.at(120, 0).thick(3.5));
    assertThat(told(said.stepUp())).isEqualTo("2");
    assertThat(told(bite(thick, Optional.empty(), true, Drill.at(120, 0)).stepUp()))
        .isEqualTo("none");
    // perhaps an overlap, but certainly not the same hole
    Bite unsure = bite(thick, Optional.empty(), true, Drill.at(0, 0).level(101, 106));
    assertThat(unsure.contact()).isEqualTo(Contact.UNSURE);
    assertThat(told(unsure.stepUp())).isEqualTo("none");
  }

  @Test
  void the_step_is_assumed_where_one_of_the_diameters_is() {
    assertThat(told(bite(true, Drill.at(100, 0).thick(3.5)).stepUp())).isEqualTo("1");
    assertThat(told(bite(true, assumed(Drill.at(100, 0).thick(3.5))).stepUp()))
        .isEqualTo("1 assumed");
    assertThat(
            told(
                bite(assumed(SCREW), Optional.empty(), true, Drill.at(100, 0).thick(3.5)).stepUp()))
        .isEqualTo("1 assumed");
  }

  @Test
  void where_levels_do_not_lie_on_the_bone_its_wall_is_that_of_the_middle_half() {
    // the level is 0 to 1 mm from the middle of the zone, not from the end of the bone
    Track screw = Drill.at(0, 0).track();
    List<OldTrack> beside = List.of(Drill.at(1, 12).old());
    Dimension thin =
        new BiteMaker(screw, Optional.empty(), beside, true, bone(23), false).bite().near();
    Dimension even =
        new BiteMaker(screw, Optional.empty(), beside, true, bone(14), false).bite().near();
    assertThat(told(Optional.of(thin))).isEqualTo(told(Optional.of(even)));
    Dimension onBone =
        new BiteMaker(screw, Optional.empty(), beside, true, bone(23), true).bite().near();
    assertThat(told(Optional.of(onBone))).isNotEqualTo(told(Optional.of(even)));
  }

  @Test
  void a_share_is_assumed_where_something_is_taken_and_the_wall_is_assumed() {
    Dimension wall = Dimension.assumed(5, 5, "");
    Dimension known = Drill.exactly(5);
    Dimension outer = Drill.exactly(24);
    Dimension usual = Dimension.assumed(24, 24, "");
    OldTrack half = Drill.at(102.25, 0).old();
    OldTrack far = Drill.at(150, 0).old();
    assertThat(new ShareLeft(SCREW.track(), outer, known).in(true, List.of(half)).assumed())
        .isFalse();
    assertThat(new ShareLeft(SCREW.track(), outer, wall).in(true, List.of(half)).assumed())
        .isTrue();
    assertThat(new ShareLeft(SCREW.track(), usual, known).in(true, List.of(half)).assumed())
        .isTrue();
    assertThat(new ShareLeft(SCREW.track(), usual, wall).in(true, List.of(far)).assumed())
        .isFalse();
  }
}
