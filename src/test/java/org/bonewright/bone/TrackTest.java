package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.bonewright.bone.Track.Overlap;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Zone;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrackTest {

  /** A bone of 20 mm. */
  private static final Dimension BONE = new Dimension(20, 20, false, "");

  private static Track track(double at, double degrees, double diameter) {
    return new Track(
        "",
        Dimension.stated(Quantity.of(at), ""),
        Optional.of(new Direction(degrees)),
        Dimension.stated(Quantity.of(diameter), ""));
  }

  @Nested
  class TwoScrewsOf4Mm {

    @Test
    void in_the_same_hole_meet() {
      assertThat(track(30, 90, 4).against(track(30, 90, 4), BONE)).isEqualTo(Overlap.POSSIBLE);
    }

    @Test
    void from_opposite_surfaces_at_one_level_meet() {
      assertThat(track(30, 90, 4).against(track(30, 270, 4), BONE)).isEqualTo(Overlap.POSSIBLE);
    }

    @Test
    void from_surfaces_at_right_angles_keep_clear_in_both_cortices() {
      // openings 2 x 10 x sin 45° = 14.1 mm apart
      assertThat(track(30, 90, 4).against(track(30, 0, 4), BONE)).isEqualTo(Overlap.CLEAR);
    }

    @ParameterizedTest(name = "{0} mm apart along the bone: {1}")
    @CsvSource({"4, POSSIBLE", "4.1, CLEAR", "-4.1, CLEAR"})
    void on_one_surface_keep_clear_beyond_their_thickness(double apart, Overlap overlap) {
      assertThat(track(30, 90, 4).against(track(30 + apart, 90, 4), BONE)).isEqualTo(overlap);
    }

    @ParameterizedTest(name = "{0} degrees apart around the bone: {1}")
    @CsvSource({
      // 2 x 10 x sin 11.5° = 3.99 mm; 2 x 10 x sin 11.6° = 4.02 mm
      "23, POSSIBLE",
      "23.2, CLEAR",
      // the far cortex lies half a turn on
      "157, POSSIBLE",
      "156.8, CLEAR"
    })
    void at_one_level_keep_clear_beyond_their_thickness(double turn, Overlap overlap) {
      assertThat(track(30, 90, 4).against(track(30, 90 + turn, 4), BONE)).isEqualTo(overlap);
    }

    @Test
    void a_little_along_and_a_little_around_add_up() {
      // 3 mm along, 2 x 10 x sin 8° = 2.78 mm around: 4.09 mm
      assertThat(track(30, 90, 4).against(track(33, 106, 4), BONE)).isEqualTo(Overlap.CLEAR);
      // 3 mm along, 2 x 10 x sin 7° = 2.44 mm around: 3.87 mm
      assertThat(track(30, 90, 4).against(track(33, 104, 4), BONE)).isEqualTo(Overlap.POSSIBLE);
    }

    @Test
    void on_an_unknown_surface_keep_clear_only_along_the_bone() {
      Track unknown =
          new Track("", track(30, 0, 4).distance(), Optional.empty(), track(30, 0, 4).diameter());
      assertThat(unknown.against(track(30, 0, 4), BONE)).isEqualTo(Overlap.POSSIBLE);
      assertThat(unknown.against(track(35, 0, 4), BONE)).isEqualTo(Overlap.CLEAR);
    }

    @Test
    void somewhere_in_a_range_may_meet_as_soon_as_one_place_meets() {
      Track vague =
          new Track(
              "",
              Dimension.assumed(20, 27, ""),
              Optional.of(new Direction(90)),
              track(0, 0, 4).diameter());
      assertThat(vague.against(track(30, 90, 4), BONE)).isEqualTo(Overlap.POSSIBLE);
      assertThat(vague.against(track(31.1, 90, 4), BONE)).isEqualTo(Overlap.CLEAR);
    }
  }

  @Property
  void it_does_not_matter_which_is_the_older(
      @ForAll @DoubleRange(min = -10, max = 10) double apart,
      @ForAll @DoubleRange(min = 0, max = 359) double one,
      @ForAll @DoubleRange(min = 0, max = 359) double two,
      @ForAll @DoubleRange(min = 2, max = 6.5) double thick,
      @ForAll @DoubleRange(min = 2, max = 6.5) double thin) {
    Track a = track(0, one, thick);
    Track b = track(apart, two, thin);
    assertThat(a.against(b, BONE)).isEqualTo(b.against(a, BONE));
  }

  /** Independent of the formula: the openings as points in space. */
  @Property(tries = 2000)
  void clear_tracks_have_their_openings_farther_apart_than_both_radii(
      @ForAll @DoubleRange(min = -8, max = 8) double apart,
      @ForAll @DoubleRange(min = 0, max = 359) double one,
      @ForAll @DoubleRange(min = 0, max = 359) double two,
      @ForAll @DoubleRange(min = 2, max = 6.5) double thick,
      @ForAll @DoubleRange(min = 2, max = 6.5) double thin,
      @ForAll @DoubleRange(min = 8, max = 32) double outer) {
    Track a = track(0, one, thick);
    Track b = track(apart, two, thin);
    boolean clear = a.against(b, new Dimension(outer, outer, false, "")) == Overlap.CLEAR;
    double least = Double.POSITIVE_INFINITY;
    for (double half : List.of(0.0, 180.0)) {
      double[] p = opening(0, one, outer);
      double[] q = opening(apart, two + half, outer);
      double x = p[0] - q[0];
      double y = p[1] - q[1];
      double z = p[2] - q[2];
      least = Math.min(least, Math.sqrt(x * x + y * y + z * z));
    }
    double radii = (thick + thin) / 2;
    if (Math.abs(least - radii) > 1e-9) {
      assertThat(clear).isEqualTo(least > radii);
    }
  }

  private static double[] opening(double level, double degrees, double outer) {
    double angle = Math.toRadians(degrees);
    return new double[] {outer / 2 * Math.cos(angle), outer / 2 * Math.sin(angle), level};
  }

  @Nested
  class OfOperations {

    private static final FractureZone ZONE =
        FractureZone.of(
            new Zone(
                Optional.of(Quantity.of(179)), Optional.of(Quantity.of(181)), Optional.empty()));

    @Test
    void there_is_one_for_every_screw_in_its_place() {
      CaseText text =
          CaseText.plated()
              .at("/operations/0/fixation/0", "{place: {firstHoleMm: 108}, surface: 'lateral'}");
      List<Track> tracks = Track.of(text.file().operations(), ZONE);
      assertThat(tracks)
          .extracting(Track::screw)
          .containsExactly(
              "op-1/plate-1 hole 1",
              "op-1/plate-1 hole 3",
              "op-1/plate-1 hole 5",
              "op-1/plate-1 hole 6",
              "op-1/plate-1 hole 8",
              "op-1/plate-1 hole 10");
      Track third = tracks.get(1);
      assertThat(third.distance().min()).isEqualTo(-40);
      assertThat(third.direction()).contains(new Direction(90));
      assertThat(third.diameter().min()).isEqualTo(4.5);
      assertThat(third.diameter().assumed()).isTrue();
    }

    @Test
    void the_thickness_stated_counts_before_the_usual_one() {
      CaseText text =
          CaseText.plated()
              .at(
                  "/operations/0/fixation/0",
                  "{screws: [{at: [1], type: 'cancellous', diameterMm: 6.5}]}");
      Track track = Track.of(text.file().operations(), ZONE).get(0);
      assertThat(track.diameter())
          .isEqualTo(Dimension.stated(Quantity.of(6.5), "screw diameter stated"));
    }

    @Test
    void a_plate_without_a_place_leaves_none() {
      CaseText text = CaseText.plated().at("/operations/0/fixation/0", "{place: null}");
      assertThat(Track.of(text.file().operations(), ZONE)).isEmpty();
    }
  }
}
