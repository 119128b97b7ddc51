package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether two cells of a number share a value, and how they are told. */
class CellTest {

  private static Cell.Span span(double low, double high) {
    return new Cell.Span(low, high, low);
  }

  /** A single number where both ends are the same, else all between the ends without them. */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 1, 1, true",
    "1, 1, 2, 2, false",
    "1, 1, 0, 2, true",
    "1, 1, 1, 2, false",
    "2, 2, 1, 2, false",
    "3, 3, 1, 2, false",
    "0, 0, 1, 2, false",
    "0, 2, 1, 3, true",
    "0, 1, 1, 2, false",
    "0, 1, 2, 3, false",
    "0, 9, 2, 3, true"
  })
  void cells_share_a_value_or_not_whichever_is_asked(
      double low, double high, double otherLow, double otherHigh, boolean meet) {
    assertThat(span(low, high).meets(span(otherLow, otherHigh))).isEqualTo(meet);
    assertThat(span(otherLow, otherHigh).meets(span(low, high))).isEqualTo(meet);
  }

  @Test
  void a_number_is_no_word_and_a_word_no_number() {
    assertThat(span(1, 2).word()).isEqualTo("none");
    assertThat(new Cell.Text("femur").number()).isNaN();
    assertThat(new Cell.Nothing().number()).isNaN();
    assertThat(new Cell.Nothing().word()).isEqualTo("none");
  }

  @Test
  void cells_are_told_by_their_ends() {
    assertThat(span(2, 2).shown()).isEqualTo("2");
    assertThat(span(1, 2).shown()).isEqualTo("between 1 and 2");
    assertThat(span(2, Double.POSITIVE_INFINITY).shown()).isEqualTo("above 2");
    assertThat(span(Double.NEGATIVE_INFINITY, 2).shown()).isEqualTo("below 2");
    assertThat(new Cell.Nothing().shown()).isEqualTo("none");
    assertThat(new Cell.Text("femur").shown()).isEqualTo("femur");
  }
}
