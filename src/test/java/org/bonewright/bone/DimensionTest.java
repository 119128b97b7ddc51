package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.bonewright.casefile.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DimensionTest {

  @Test
  void one_of_two_ranges_is_anything_from_the_lower_to_the_higher_bound() {
    assertThat(new Dimension(1, 2, false, "film").or(new Dimension(4, 6, true, "table")))
        .isEqualTo(new Dimension(1, 6, true, "film"));
  }

  @Test
  void two_ranges_of_one_thing_leave_what_they_share_and_the_first_where_that_is_nothing() {
    Dimension film = new Dimension(1, 4, false, "film");
    assertThat(film.within(new Dimension(3, 9, true, "table")))
        .isEqualTo(new Dimension(3, 4, true, "film"));
    assertThat(film.within(new Dimension(0, 5, true, "table"))).isEqualTo(film);
    assertThat(film.within(new Dimension(5, 9, true, "table"))).isEqualTo(film);
  }

  private static Dimension exact(double value) {
    return Dimension.stated(Quantity.of(value), "stated");
  }

  @Test
  void refuses_bounds_in_the_wrong_order() {
    assertThatThrownBy(() -> Dimension.assumed(2, 1, "table"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2.0 to 1.0");
  }

  @Test
  void refuses_a_bound_that_is_no_number() {
    assertThatThrownBy(() -> Dimension.assumed(Double.NaN, 1, "table"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_result_is_assumed_when_either_part_is() {
    Dimension table = Dimension.assumed(1, 2, "table");
    assertThat(exact(3).plus(exact(4)).assumed()).isFalse();
    assertThat(exact(3).plus(table).assumed()).isTrue();
    assertThat(table.minus(exact(3)).assumed()).isTrue();
    assertThat(exact(3).over(table).assumed()).isTrue();
  }

  @Test
  void a_result_names_both_origins_but_the_same_one_once() {
    assertThat(exact(3).plus(Dimension.assumed(1, 2, "table")).basis()).isEqualTo("stated; table");
    assertThat(exact(3).plus(exact(4)).basis()).isEqualTo("stated");
  }

  @Test
  void the_larger_of_two_that_do_not_meet_is_one_of_them() {
    Dimension table = Dimension.assumed(10, 12, "table");
    assertThat(exact(15).atLeast(table)).isEqualTo(exact(15));
    assertThat(exact(8).atLeast(table)).isEqualTo(table);
  }

  @Test
  void one_that_begins_where_the_other_ends_is_the_larger_by_itself() {
    Dimension table = Dimension.assumed(10, 12, "table");
    assertThat(exact(12).atLeast(table)).isEqualTo(exact(12));
    assertThat(exact(10).atLeast(table)).isEqualTo(table);
  }

  @Test
  void a_quotient_runs_from_the_least_by_the_most_to_the_most_by_the_least() {
    // 6 / 4 to 10 / 2
    Dimension quotient = Dimension.assumed(6, 10, "a").over(Dimension.assumed(2, 4, "a"));
    assertThat(quotient).isEqualTo(Dimension.assumed(1.5, 5, "a"));
  }

  @Test
  void what_has_no_upper_bound_is_written_so() {
    assertThat(Dimension.assumed(4, Double.POSITIVE_INFINITY, "").numbers()).isEqualTo("4 or more");
  }

  @Test
  void the_larger_of_two_that_meet_is_taken_bound_by_bound() {
    Dimension larger = Dimension.assumed(9, 11, "a").atLeast(Dimension.assumed(10, 12, "b"));
    assertThat(larger).isEqualTo(Dimension.assumed(10, 12, "a; b"));
  }

  @Test
  void a_magnitude_is_the_distance_from_zero() {
    assertThat(Dimension.assumed(2, 5, "a").magnitude()).isEqualTo(Dimension.assumed(2, 5, "a"));
    assertThat(Dimension.assumed(-5, -2, "a").magnitude()).isEqualTo(Dimension.assumed(2, 5, "a"));
    assertThat(Dimension.assumed(-5, 2, "a").magnitude()).isEqualTo(Dimension.assumed(0, 5, "a"));
  }

  @Test
  void refuses_to_divide_by_a_range_that_touches_zero() {
    assertThatThrownBy(() -> exact(1).over(Dimension.assumed(0, 1, "table")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> exact(-1).over(exact(1))).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest(name = "{0} to {1} is written {2}")
  @CsvSource({
    "12, 12, 12",
    "11.5, 13, 11.5–13",
    "1.256, 1.256, 1.26",
    "12.34, 12.34, 12.3",
    "123.4, 123.6, 123–124",
    "-0.5, 0.25, -0.5 to 0.25",
    "0, 0, 0",
    "0, 5, 0–5"
  })
  void writes_numbers_as_people_do(double min, double max, String written) {
    assertThat(new Dimension(min, max, false, "").numbers()).isEqualTo(written);
  }

  /** A range and a value that it holds. */
  record Within(Dimension range, double value) {}

  @Provide
  Arbitrary<Within> lengths() {
    return within(Arbitraries.doubles().between(0, 500));
  }

  @Provide
  Arbitrary<Within> differences() {
    return within(Arbitraries.doubles().between(-500, 500));
  }

  private static Arbitrary<Within> within(Arbitrary<Double> bounds) {
    return Combinators.combine(bounds, bounds, Arbitraries.doubles().between(0, 1))
        .as(
            (a, b, share) -> {
              double min = Math.min(a, b);
              double max = Math.max(a, b);
              double value = Math.min(max, Math.max(min, min + share * (max - min)));
              return new Within(Dimension.assumed(min, max, "any"), value);
            });
  }

  private static void holds(Dimension range, double value) {
    assertThat(value).isBetween(range.min(), range.max());
  }

  @Property
  void a_sum_holds_every_sum_of_values(
      @ForAll("differences") Within a, @ForAll("differences") Within b) {
    holds(a.range().plus(b.range()), a.value() + b.value());
    holds(a.range().plus(b.value()), a.value() + b.value());
  }

  @Property
  void a_difference_holds_every_difference_of_values(
      @ForAll("differences") Within a, @ForAll("differences") Within b) {
    holds(a.range().minus(b.range()), a.value() - b.value());
  }

  @Property
  void a_quotient_holds_every_quotient_of_values(
      @ForAll("lengths") Within a, @ForAll("lengths") Within b) {
    Dimension divisor = b.range().plus(1);
    holds(a.range().over(divisor), a.value() / (b.value() + 1));
  }

  @Property
  void the_larger_of_two_ranges_holds_the_larger_of_any_two_values(
      @ForAll("differences") Within a, @ForAll("differences") Within b) {
    holds(a.range().atLeast(b.range()), Math.max(a.value(), b.value()));
  }

  @Property
  void the_middle_lies_within(@ForAll("differences") Within a) {
    holds(a.range(), a.range().middle());
  }
}
