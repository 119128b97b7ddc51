package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.bonewright.casefile.Direction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A thread of 4.5 mm with a core of 3 mm in a cortex of 5 mm. */
class ThreadSleeveTest {

  private static double left(double distance, double bore) {
    Line axis = Line.into(0, new Direction(0), 0, 24);
    Line old = Line.into(distance, new Direction(0), 0, 24);
    return new ThreadSleeve(axis, 0, 5, 3.0, 4.5)
        .outside(List.of(new ThreadSleeve.Bore(old, bore)));
  }

  @ParameterizedTest(name = "{1} mm at {0} mm leaves {2}")
  @CsvSource({
    // within the core nothing is lost, over the whole thread everything
    "0, 2.7, 1",
    "0, 3.0, 1",
    "0, 4.5, 0",
    "0, 6.5, 0",
    "1, 6.5, 0",
    "0.15, 2.7, 1",
    // 1 - (3.5² - 3²) / (4.5² - 3²) = 1 - 3.25 / 11.25
    "0, 3.5, 0.7111",
    // 1 - (4² - 3²) / (4.5² - 3²) = 1 - 7 / 11.25
    "0, 4.0, 0.3778",
    // lens(2.25, 2.25, 2.25) = 6.2186, lens(1.5, 2.25, 2.25) = 3.0285, ring 8.8357
    "2.25, 4.5, 0.6390",
    "-2.25, 4.5, 0.6390",
    // edge to edge, and farther
    "4.5, 4.5, 1",
    "4.0, 3.5, 1",
    "60, 4.5, 1"
  })
  void leaves_what_two_circles_leave(double distance, double bore, double share) {
    assertThat(left(distance, bore)).isCloseTo(share, within(0.0001));
  }

  @Test
  void leaves_the_same_whether_two_bores_are_one_or_lie_on_each_other() {
    Line axis = Line.into(0, new Direction(30), 0, 24);
    ThreadSleeve sleeve = new ThreadSleeve(axis, 19, 5, 3.0, 4.5);
    ThreadSleeve.Bore bore = new ThreadSleeve.Bore(Line.into(2, new Direction(210), 0, 24), 4.5);
    assertThat(sleeve.outside(List.of(bore, bore)))
        .isCloseTo(sleeve.outside(List.of(bore)), within(0.005));
    assertThat(sleeve.outside(List.of())).isEqualTo(1);
  }

  @ParameterizedTest(name = "circles of {0} and {1}, {2} apart")
  @CsvSource({
    "2.25, 2.25, 1",
    "2.25, 2.25, 4.4",
    "1.5, 2.25, 0.74",
    "1.5, 2.25, 0.76",
    "1.5, 2.25, 2",
    "3.25, 1.2, 2.1",
    "3.25, 1.2, 4.44",
    "3.25, 1.2, 4.46",
    "1, 5, 3.99",
    "1, 5, 5",
    "2, 2, 0",
    "1.2, 3.25, 2.06",
    "0.001, 3, 3"
  })
  void common_area_of_circles_is_that_of_thin_strips(double r, double q, double s) {
    int strips = 200_000;
    double width = 2 * r / strips;
    double area =
        IntStream.range(0, strips)
            .mapToDouble(i -> -r + (i + 0.5) * width)
            .map(x -> 2 * width * Math.min(half(r, x), half(q, x - s)))
            .sum();
    assertThat(ThreadSleeve.lens(r, q, s)).isCloseTo(area, within(0.00001));
    assertThat(ThreadSleeve.lens(q, r, s)).isCloseTo(area, within(0.00001));
  }

  private static double half(double radius, double x) {
    return Math.sqrt(Math.max(0, radius * radius - x * x));
  }
}
