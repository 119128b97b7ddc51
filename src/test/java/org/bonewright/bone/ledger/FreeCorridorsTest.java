package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.BoneGrade;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Section;
import org.bonewright.casefile.Side;
import org.junit.jupiter.api.Test;

/**
 * By hand, on a tube of 24 mm: two screws of 4.5 mm must keep their middles 4.5 + 4.5 = 9 mm apart
 * on the surface, a screw of 5 mm and a track of 4.5 mm 5 + 4.75 = 9.75 mm. An eighth of a turn is
 * a chord of 24 sin 22.5° = 9.18 mm, a quarter 16.97 mm.
 */
class FreeCorridorsTest {

  private static final Direction LATERAL = new Direction(90);
  private static final FreeCorridors.Row THREE = new FreeCorridors.Row(3, 16, 4.5);

  private static final BoneShape TUBE =
      new BoneShape(
          new Bone(
              BoneName.TIBIA,
              Side.LEFT,
              Optional.of(Quantity.of(360)),
              Optional.empty(),
              List.of(section(50), section(350)),
              Optional.empty(),
              List.of(),
              List.of()),
          Optional.empty(),
          EnumSet.of(BoneGrade.GOOD));

  private static Section section(double level) {
    return new Section(
        Quantity.of(level), Optional.of(Quantity.of(24)), Optional.of(Quantity.of(10)));
  }

  private static OldTrack track(double level, Optional<Direction> direction, Track.Reach reach) {
    Track track =
        new Track(
            "op-1/plate-1 hole 1",
            0,
            "op-1/plate-1",
            Track.Kind.PLATE_SCREW,
            Optional.of(new Dimension(level, level, false, "stated")),
            direction,
            0,
            new Dimension(4.5, 4.5, false, "stated"),
            3,
            reach,
            Optional.empty());
    return new OldTrack(track, Optional.empty(), "op-1", Optional.empty(), false, false);
  }

  private static OldTrack through(double level) {
    return track(level, Optional.of(LATERAL), Track.Reach.BOTH_CORTICES);
  }

  private static List<Corridor> free(
      List<OldTrack> older, FreeCorridors.Row row, double surface, double from, double to) {
    return new FreeCorridors(older, true, TUBE, row).on(new Direction(surface), from, to);
  }

  private static Corridor corridor(double surface, double from, double to) {
    return new Corridor(new Direction(surface), from, to);
  }

  @Test
  void bone_never_drilled_is_free_from_end_to_end() {
    assertThat(free(List.of(), THREE, 90, 150, 250)).containsExactly(corridor(90, 150, 250));
  }

  @Test
  void a_track_takes_nine_millimetres_either_way_on_its_own_surface() {
    assertThat(free(List.of(through(200)), THREE, 90, 150, 250))
        .containsExactly(corridor(90, 150, 191), corridor(90, 209, 250));
  }

  @Test
  void a_track_through_both_cortices_takes_the_same_on_the_other_side() {
    assertThat(free(List.of(through(200)), THREE, 270, 150, 250))
        .containsExactly(corridor(270, 150, 191), corridor(270, 209, 250));
  }

  @Test
  void a_track_takes_nothing_a_quarter_of_a_turn_away() {
    assertThat(free(List.of(through(200)), THREE, 0, 150, 250))
        .containsExactly(corridor(0, 150, 250));
  }

  @Test
  void a_thicker_screw_is_kept_off_an_eighth_of_a_turn_away() {
    // Along the bone √(9.75² − 9.184²) = 3.27 mm, so 3.5 mm at steps of half a millimetre.
    assertThat(free(List.of(through(200)), new FreeCorridors.Row(3, 16, 5), 45, 150, 250))
        .containsExactly(corridor(45, 150, 196.5), corridor(45, 203.5, 250));
    assertThat(free(List.of(through(200)), THREE, 45, 150, 250))
        .containsExactly(corridor(45, 150, 250));
  }

  @Test
  void a_stretch_shorter_than_the_row_is_no_corridor() {
    // From 165 to 191 there are 26 mm; three screws 16 mm apart need 32.
    assertThat(free(List.of(through(200)), THREE, 90, 165, 250))
        .containsExactly(corridor(90, 209, 250));
    assertThat(free(List.of(through(200)), THREE, 90, 159, 250))
        .containsExactly(corridor(90, 159, 191), corridor(90, 209, 250));
  }

  @Test
  void a_stretch_half_a_millimetre_too_short_or_between_two_tracks_is_none_either() {
    // 159.5 to 191: 31.5 mm
    assertThat(free(List.of(through(200)), THREE, 90, 159.5, 250))
        .containsExactly(corridor(90, 209, 250));
    // 209 to 231: 22 mm; 209 to 241: 32 mm
    assertThat(free(List.of(through(200), through(240)), THREE, 90, 150, 290))
        .containsExactly(corridor(90, 150, 191), corridor(90, 249, 290));
    assertThat(free(List.of(through(200), through(250)), THREE, 90, 150, 299))
        .containsExactly(corridor(90, 150, 191), corridor(90, 209, 241), corridor(90, 259, 299));
  }

  @Test
  void a_track_whose_direction_is_not_recorded_takes_its_level_on_every_surface() {
    OldTrack anywhere = track(200, Optional.empty(), Track.Reach.BOTH_CORTICES);
    for (double surface : new double[] {0, 45, 90, 180, 270}) {
      assertThat(free(List.of(anywhere), THREE, surface, 150, 250))
          .containsExactly(corridor(surface, 150, 191), corridor(surface, 209, 250));
    }
  }

  @Test
  void a_track_of_unknown_level_leaves_no_bone_known_to_be_free() {
    Track lost =
        new Track(
            "op-1/nail-1 bolt 1",
            0,
            "op-1/nail-1",
            Track.Kind.BOLT,
            Optional.empty(),
            Optional.of(LATERAL),
            0,
            new Dimension(5, 5, false, "stated"),
            4.3,
            Track.Reach.BOTH_CORTICES,
            Optional.empty());
    OldTrack old = new OldTrack(lost, Optional.empty(), "op-1", Optional.empty(), false, false);
    assertThat(free(List.of(old), THREE, 0, 150, 250)).isEmpty();
  }

  @Test
  void where_not_every_track_is_told_no_bone_is_known_to_be_free() {
    FreeCorridors free = new FreeCorridors(List.of(), false, TUBE, THREE);
    assertThat(free.on(LATERAL, 150, 250)).isEmpty();
  }

  @Test
  void a_window_shorter_than_nothing_holds_no_corridor() {
    assertThat(free(List.of(), THREE, 90, 200, 190)).isEmpty();
  }
}
