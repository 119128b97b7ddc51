package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ReadingTest {

  private static final MissingFact LEVEL = new MissingFact("op-1/level", "At which level?");
  private static final MissingFact SIDE = new MissingFact("op-1/side", "From which side?");
  private static final MissingFact WHICH = new MissingFact("op-1/mode", "Which was it?");

  private static Reading.Amount amount(double min, double max, Kind kind, MissingFact... missing) {
    return new Reading.Amount(min, max, kind, min + " to " + max, List.of(missing));
  }

  @Nested
  class A_number {

    @Test
    void that_is_exact_asks_for_nothing() {
      Reading exact = Reading.number(new Dimension(3, 3, false, ""), "as stated", LEVEL);
      assertThat(exact).isEqualTo(new Reading.Amount(3, 3, Kind.FACT, "as stated", List.of()));
    }

    @Test
    void that_is_a_range_asks_for_what_would_make_it_exact() {
      Reading range = Reading.number(new Dimension(3, 4, false, ""), "as stated", LEVEL);
      assertThat(range).isEqualTo(new Reading.Amount(3, 4, Kind.FACT, "as stated", List.of(LEVEL)));
    }

    @Test
    void from_a_table_stays_marked_as_assumed() {
      Reading usual = Reading.number(Dimension.assumed(3, 4, ""), "usual", LEVEL);
      assertThat(usual).isEqualTo(new Reading.Amount(3, 4, Kind.ASSUMED, "usual", List.of(LEVEL)));
    }

    @Test
    void is_freed_of_the_dust_of_computing_but_not_cut_short() {
      Reading.Amount small = amount(0.1 + 0.2, 0.1 + 0.2, Kind.FACT);
      assertThat(small.min()).isEqualTo(0.3);
      // above a million nothing is rounded, and no end stays no end
      assertThat(amount(2e6 + 1e-9, Double.POSITIVE_INFINITY, Kind.FACT).min())
          .isEqualTo(2e6 + 1e-9);
      assertThat(amount(1, Double.POSITIVE_INFINITY, Kind.FACT).max())
          .isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void is_no_number_where_its_ends_are_turned_or_missing() {
      assertThatThrownBy(() -> amount(2, 1, Kind.FACT))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> amount(Double.NaN, 1, Kind.FACT))
          .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void is_shown_with_its_unit_where_it_has_one() {
      assertThat(amount(3, 4, Kind.FACT).shown()).isEqualTo("3–4");
      assertThat(amount(3, 4, Kind.FACT).shown("mm")).isEqualTo("3–4 mm");
      assertThat(amount(3, 4, Kind.FACT).shown("")).isEqualTo("3–4");
    }
  }

  @Nested
  class One_of_several_numbers {

    @Test
    void reaches_from_the_least_to_the_largest_and_asks_which_it_is() {
      Reading.Amount either =
          Reading.Amount.oneOf(
              List.of(amount(1, 2, Kind.FACT, LEVEL), amount(3, 3, Kind.FACT, SIDE)), WHICH);
      assertThat(either)
          .isEqualTo(
              new Reading.Amount(
                  1, 3, Kind.FACT, "1.0 to 2.0, or 3.0 to 3.0", List.of(LEVEL, SIDE, WHICH)));
    }

    @Test
    void does_not_ask_which_where_all_read_the_same() {
      Reading.Amount same =
          Reading.Amount.oneOf(
              List.of(amount(1, 2, Kind.FACT, LEVEL), amount(1, 2, Kind.FACT, LEVEL)), WHICH);
      assertThat(same).isEqualTo(new Reading.Amount(1, 2, Kind.FACT, "1.0 to 2.0", List.of(LEVEL)));
    }

    @Test
    void asks_which_where_only_one_end_differs() {
      assertThat(
              Reading.Amount.oneOf(List.of(amount(1, 2, Kind.FACT), amount(1, 3, Kind.FACT)), WHICH)
                  .missing())
          .containsExactly(WHICH);
      assertThat(
              Reading.Amount.oneOf(List.of(amount(1, 3, Kind.FACT), amount(2, 3, Kind.FACT)), WHICH)
                  .missing())
          .containsExactly(WHICH);
    }

    @Test
    void is_assumed_as_soon_as_one_of_them_is() {
      assertThat(
              Reading.Amount.oneOf(
                      List.of(amount(1, 1, Kind.FACT), amount(1, 1, Kind.ASSUMED)), WHICH)
                  .kind())
          .isEqualTo(Kind.ASSUMED);
      assertThat(
              Reading.Amount.oneOf(List.of(amount(1, 1, Kind.FACT), amount(1, 1, Kind.FACT)), WHICH)
                  .kind())
          .isEqualTo(Kind.FACT);
    }
  }

  @Test
  void samples_are_numbers_every_one_of_them() {
    assertThatThrownBy(
            () -> new Reading.Sampled(1, List.of(1.0, Double.NaN), "", "load", List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Reading.Sampled(Double.NaN, List.of(1.0), "", "load", List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Reading.Sampled(1, List.of(), "", "load", List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new Reading.Sampled(3, List.of(3.0, 3.0), "", "load", List.of()).shown())
        .isEqualTo("3");
  }

  @Test
  void words_are_shown_as_a_choice_and_what_is_not_known_is_said_to_be_so() {
    Reading either = Reading.words(Set.of("yes", "no"), Kind.FACT, "cannot be told", LEVEL);
    assertThat(either.shown()).isEqualTo("no or yes");
    assertThat(either.missing()).containsExactly(LEVEL);
    assertThat(Reading.words(Set.of("yes"), Kind.FACT, "as stated", LEVEL).missing()).isEmpty();

    Reading unknown = Reading.unknown(LEVEL, SIDE);
    assertThat(unknown.shown("mm")).isEqualTo("not known");
    assertThat(unknown.working()).isEqualTo("At which level? From which side?");

    Reading none = new Reading.None("no plate in place");
    assertThat(none.shown()).isEqualTo("none");
    assertThat(none.working()).isEqualTo("no plate in place");
  }

  @Test
  void what_several_readings_miss_is_asked_once_in_their_order() {
    assertThat(
            Reading.missingOf(
                Reading.unknown(SIDE), Reading.unknown(LEVEL, SIDE), new Reading.None("none")))
        .containsExactly(SIDE, LEVEL);
  }

  @Test
  void missing_facts_stand_in_the_order_of_their_fields_then_of_their_questions() {
    MissingFact again = new MissingFact("op-1/level", "How high?");
    assertThat(List.of(SIDE, again, LEVEL).stream().sorted()).containsExactly(LEVEL, again, SIDE);
  }
}
