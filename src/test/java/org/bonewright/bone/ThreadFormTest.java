package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.bonewright.casefile.ScrewRow;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadFormTest {

  @ParameterizedTest(name = "{0} of {1} mm: core {2}, pitch {3}")
  @CsvSource({
    "CORTICAL, 3.5, 2.4, 1.25",
    "CORTICAL, 4.5, 3.0, 1.75",
    "CORTICAL, 2.7, 1.9, 1.0",
    "CANCELLOUS, 6.5, 3.0, 2.75",
    "CANCELLOUS, 4.0, 1.9, 1.75",
    "LOCKING, 3.5, 2.9, 0.8",
    "LOCKING, 5.0, 4.35, 1.0",
    // in proportion: 6 / 5 of the row of 5.0, 2.4 / 2.7 of that of 2.7, 4 / 3.5 of that of 3.5
    "CORTICAL, 6.0, 4.2, 2.1",
    "CORTICAL, 2.4, 1.6889, 0.8889",
    "LOCKING, 4.0, 3.3143, 0.9143"
  })
  void is_that_of_the_row_or_in_proportion(
      ScrewRow.Type type, double major, double core, double pitch) {
    ThreadForm thread = ThreadForm.of(type, major);
    assertThat(thread.major()).isEqualTo(major);
    assertThat(thread.core()).isCloseTo(core, within(0.0001));
    assertThat(thread.pitch()).isCloseTo(pitch, within(0.0001));
  }
}
