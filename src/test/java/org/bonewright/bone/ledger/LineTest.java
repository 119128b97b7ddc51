package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.bonewright.casefile.Direction;
import org.junit.jupiter.api.Test;

/** Axes of screws in a bone of 24 mm, by hand. */
class LineTest {

  private static Line into(double level, double degrees, double tilt) {
    return Line.into(level, new Direction(degrees), tilt, 24);
  }

  @Test
  void a_tilted_screw_goes_inwards_and_along_the_bone() {
    // from lateral, 30 degrees: after 8 mm 8 cos 30 = 6.928 inwards and 8 sin 30 = 4 along
    double[] lateral = into(100, 90, 30).at(8);
    assertThat(lateral[0]).isCloseTo(0, within(1e-9));
    assertThat(lateral[1]).isCloseTo(12 - 6.9282, within(0.0001));
    assertThat(lateral[2]).isCloseTo(104, within(1e-9));
    double[] anterior = into(100, 0, 30).at(8);
    assertThat(anterior[0]).isCloseTo(12 - 6.9282, within(0.0001));
    assertThat(anterior[1]).isCloseTo(0, within(1e-9));
  }

  @Test
  void a_screw_of_any_tilt_and_side_meets_the_axis_of_the_bone_half_way() {
    // 12 mm inwards: 12 / cos 20 along the screw, 12 tan 20 = 4.3676 along the bone
    double[] half = into(100, 240, 20).at(12 / Math.cos(Math.toRadians(20)));
    assertThat(half[0]).isCloseTo(0, within(1e-9));
    assertThat(half[1]).isCloseTo(0, within(1e-9));
    assertThat(half[2]).isCloseTo(104.3676, within(0.0001));
  }

  @Test
  void a_point_lies_as_far_from_an_axis_as_the_square_to_it_is_long() {
    // 3 and 4 mm across, whatever lies along: 5 mm
    assertThat(into(0, 0, 0).squaredDistance(-7, 3, 4)).isCloseTo(25, within(1e-9));
    assertThat(into(0, 90, 0).squaredDistance(3, -7, 4)).isCloseTo(25, within(1e-9));
    assertThat(new Line(1, 2, 3, 0, 0, 1).squaredDistance(4, 6, 90)).isCloseTo(25, within(1e-9));
    assertThat(new Line(1, 2, 3, 1, 0, 0).squaredDistance(90, 5, 7)).isCloseTo(25, within(1e-9));
  }

  @Test
  void axes_from_the_same_or_the_opposite_side_are_parallel() {
    assertThat(into(0, 45, 0).parallelDistance(into(7, 45, 0)).orElseThrow())
        .isCloseTo(7, within(1e-6));
    assertThat(into(0, 45, 0).parallelDistance(into(7, 225, 0)).orElseThrow())
        .isCloseTo(7, within(1e-6));
    // tilted alike: 10 cos 30
    assertThat(into(0, 120, 30).parallelDistance(into(10, 120, 30)).orElseThrow())
        .isCloseTo(8.6603, within(0.0001));
    // out at 24 tan 30 = 13.8564 on the other side, where the second one goes in against it
    assertThat(into(0, 0, 30).parallelDistance(into(13.8564, 180, -30)).orElseThrow())
        .isCloseTo(0, within(0.0001));
  }

  @Test
  void axes_that_are_turned_or_tilted_against_each_other_are_not() {
    assertThat(into(0, 45, 0).parallelDistance(into(0, 46, 0))).isEmpty();
    assertThat(into(0, 45, 0).parallelDistance(into(0, 135, 0))).isEmpty();
    assertThat(into(0, 0, 30).parallelDistance(into(0, 180, 30))).isEmpty();
    assertThat(into(0, 0, 45).parallelDistance(into(0, 180, 45))).isEmpty();
  }
}
