package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A number of a model is shown as far as its range tells, and never finer than three digits. */
class LikelyRangeTest {

  private static String shown(double nominal, double low, double high) {
    return new LikelyRange(nominal, low, high).shown("");
  }

  @Test
  void the_unit_stands_behind_the_number_and_behind_the_range() {
    assertThat(new LikelyRange(0.4213, 0.2042, 0.8987).shown("mm"))
        .isEqualTo("0.42 mm (likely 0.2–0.9 mm)");
  }

  @Test
  void the_width_of_the_range_sets_the_last_digit() {
    assertThat(shown(12.345, 8.21, 31.9)).isEqualTo("12 (likely 8–32)");
    assertThat(shown(12.345, 12.21, 12.98)).isEqualTo("12.3 (likely 12.2–13)");
    assertThat(shown(1_234_567, 412_000, 2_951_000)).isEqualTo("1200000 (likely 400000–3000000)");
  }

  @Test
  void three_digits_are_the_most() {
    assertThat(shown(101.26, 101.01, 102.44)).isEqualTo("101 (likely 101–102)");
    assertThat(shown(0.0123456, 0.0123456, 0.0123456)).isEqualTo("0.0123");
  }

  @Test
  void one_number_stands_alone_where_the_range_shows_the_same() {
    assertThat(shown(3, 3, 3)).isEqualTo("3");
    assertThat(shown(0, 0, 0)).isEqualTo("0");
    assertThat(shown(3, 4, 4)).isEqualTo("3 (likely 4)");
  }

  @Test
  void little_is_not_shown_as_nothing() {
    assertThat(shown(0.0213, 0.01, 19.2)).isEqualTo("0.02 (likely 0.01–19)");
    assertThat(shown(0.46, 0, 64.2)).isEqualTo("0.5 (likely 0–64)");
    assertThat(shown(0.0004, 0, 3)).isEqualTo("0 (likely 0–3)");
  }

  @Test
  void a_range_below_zero_has_no_dash_between_its_ends_and_nothing_is_minus_zero() {
    assertThat(shown(-0.001, -1.2, 2)).isEqualTo("0 (likely -1.2 to 2)");
  }

  @Test
  void a_range_may_have_no_end() {
    assertThat(shown(90_000, 12_345, Double.POSITIVE_INFINITY))
        .isEqualTo("90000 (likely 12300 or more)");
    assertThat(shown(Double.POSITIVE_INFINITY, 1, Double.POSITIVE_INFINITY))
        .isEqualTo("without end (likely 1 or more)");
  }

  @Test
  void a_sampled_reading_shows_the_range_of_nine_samples_in_ten() {
    List<Double> samples = IntStream.rangeClosed(1, 100).mapToObj(i -> i / 10.0).toList();
    Reading.Sampled reading = new Reading.Sampled(4.9999, samples, "", "the load", List.of());
    assertThat(reading.shown("N")).isEqualTo("5 N (likely 0.5–9.6 N)");
    assertThat(reading.rounded(4.9999)).isEqualTo(5);
  }
}
