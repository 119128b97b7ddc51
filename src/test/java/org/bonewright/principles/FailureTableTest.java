package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.FailureMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of how failures read. */
class FailureTableTest {

  private static final RuleSet RULES = RuleSet.built();

  @Test
  void names_causes_of_cards_only() {
    List<String> known = RULES.cards().stream().map(Card::cause).distinct().toList();
    assertThat(known).containsAll(RULES.failures().causes());
  }

  @Test
  void counts_places_in_a_row_from_one() {
    assertThat(
            RULES
                .failures()
                .place(FailureMode.SCREWS_PULLED_OUT_IN_SEQUENCE, "cortices-per-side-conventional"))
        .hasValue(1);
    assertThat(
            RULES
                .failures()
                .place(FailureMode.SCREWS_PULLED_OUT_IN_SEQUENCE, "nail-diameter-fits-isthmus"))
        .isEmpty();
  }

  @ParameterizedTest
  @EnumSource(FailureMode.class)
  void a_mode_that_leaves_two_open_looks_at_what_either_looks_at(FailureMode mode) {
    List<String> either =
        mode.possible().stream()
            .flatMap(exact -> RULES.failures().principlesOf(exact).stream())
            .distinct()
            .toList();
    assertThat(RULES.failures().principlesOf(mode)).containsExactlyInAnyOrderElementsOf(either);
  }

  @ParameterizedTest(name = "{0} after {1} to {2} weeks: {3}")
  @CsvSource({
    "hold, 0, 5.9, true",
    "hold, 4, 8, true",
    "hold, 13, 20, false",
    "hold, 8, 20, false",
    "biology, 4, 4, false",
    "biology, 20, 20, true",
    "infection, 51, 60, false",
    "infection, 52, 60, true",
    "records, 10, 10, false"
  })
  void a_cause_fits_a_time_only_where_every_window_touched_names_it(
      String cause, double from, double to, boolean fits) {
    assertThat(RULES.failures().fitsTime(cause, new Dimension(from, to, false, "")))
        .isEqualTo(fits);
  }
}
