package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bonewright.bone.ledger.ThreadSleeve.Bore;
import org.bonewright.casefile.Direction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A thread of 4.5 mm with a core of 3 mm, cut by a bore that is so wide that its wall is as good as
 * a plane: what that leaves is known from areas alone, however the screw lies.
 */
class ThreadCutAcrossTest {

  private static final double WIDE = 20_000;

  /** The unit vectors across a screw: one leans along the bone, the other runs round it. */
  private static double[][] across(double degrees, double tilt) {
    double a = Math.toRadians(degrees);
    double t = Math.toRadians(tilt);
    return new double[][] {
      {Math.sin(t) * Math.cos(a), Math.sin(t) * Math.sin(a), Math.cos(t)},
      {-Math.sin(a), Math.cos(a), 0}
    };
  }

  /** A bore beyond a plane {@code away} mm from a point, that runs along another direction. */
  private static Bore beyond(double[] point, double[] normal, double away, double[] along) {
    double far = away + WIDE / 2;
    return new Bore(
        new Line(
            point[0] + far * normal[0],
            point[1] + far * normal[1],
            point[2] + far * normal[2],
            along[0],
            along[1],
            along[2]),
        WIDE);
  }

  @ParameterizedTest(name = "from {0} degrees, tilted by {1}")
  @CsvSource({"0, 0", "90, 0", "0, 30", "90, 30", "60, 25", "200, -40", "315, 10"})
  void a_plane_beside_the_core_takes_a_segment_of_the_ring(double degrees, double tilt) {
    Line axis = Line.into(50, new Direction(degrees), tilt, 24);
    ThreadSleeve sleeve = new ThreadSleeve(axis, 2, 4, 3.0, 4.5);
    double[][] across = across(degrees, tilt);
    double[] middle = axis.at(4);
    // 2.25² acos(1.5 / 2.25) - 1.5 √(2.25² - 1.5²) = 1.7423 of π (2.25² - 1.5²) = 8.8357 mm²
    for (int one = 0; one < 2; one++) {
      double[] normal = across[one];
      double[] back = {-normal[0], -normal[1], -normal[2]};
      assertThat(sleeve.outside(List.of(beyond(middle, normal, 1.5, across[1 - one]))))
          .isCloseTo(0.8028, within(0.005));
      assertThat(sleeve.roughlyOutside(List.of(beyond(middle, back, 1.5, across[1 - one]))))
          .isCloseTo(0.8028, within(0.02));
      assertThat(sleeve.outside(List.of(beyond(middle, normal, 0, across[1 - one]))))
          .isCloseTo(0.5, within(0.005));
    }
  }

  @ParameterizedTest(name = "from {0} degrees, tilted by {1}")
  @CsvSource({"0, 0", "90, 0", "60, 25", "200, -40"})
  void a_plane_square_to_the_screw_takes_what_lies_before_it(double degrees, double tilt) {
    Line axis = Line.into(50, new Direction(degrees), tilt, 24);
    double[] back = {-axis.dx(), -axis.dy(), -axis.dz()};
    double[] round = across(degrees, tilt)[1];
    // the thread from 2 to 6 mm: a plane at 3 mm takes the first quarter, one at 5 mm three
    ThreadSleeve sleeve = new ThreadSleeve(axis, 2, 4, 3.0, 4.5);
    assertThat(sleeve.outside(List.of(beyond(axis.at(3), back, 0, round))))
        .isCloseTo(0.75, within(0.005));
    assertThat(sleeve.outside(List.of(beyond(axis.at(5), back, 0, round))))
        .isCloseTo(0.25, within(0.005));
  }

  @ParameterizedTest(name = "across at {0} mm")
  @CsvSource({"1.5", "4", "19", "24.5", "26.5"})
  void a_bore_at_either_end_of_a_long_thread_takes_its_part(double at) {
    // from 2 to 27 mm, across at the axis: within the wall as much everywhere, 1.5 mm from an
    // end less; a piece of 8 mm round the same place tells how much
    Line axis = Line.into(0, new Direction(0), 0, 40);
    double[] place = axis.at(at);
    Bore bore = new Bore(new Line(place[0], place[1], place[2], 0, 1, 0), 3);
    double from = Math.max(2, at - 4);
    double to = Math.min(27, at + 4);
    double piece = new ThreadSleeve(axis, from, to - from, 3.0, 4.5).outside(List.of(bore));
    double whole = new ThreadSleeve(axis, 2, 25, 3.0, 4.5).outside(List.of(bore));
    assertThat((1 - whole) * 25).isCloseTo((1 - piece) * (to - from), within(0.3));
    assertThat(whole).isLessThan(0.99);
  }
}
