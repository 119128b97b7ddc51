package org.bonewright.casefile.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

  private static final List<String> KNOWN =
      List.of("lengthMm", "landmarkOffsetMm", "side", "ap-lateral", "gapNearMm", "gapFarMm");

  @ParameterizedTest
  @CsvSource({
    "lenghtMm, lengthMm",
    "length_mm, lengthMm",
    "LENGTHMM, lengthMm",
    "length, lengthMm",
    "sied, side",
    "sid, side",
    "AP_Lateral, ap-lateral",
    "ap lateral, ap-lateral",
    "gapFaarMm, gapFarMm"
  })
  void finds_the_word_that_was_meant(String written, String meant) {
    assertThat(Nearest.of(written, KNOWN)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"colour", "x", "gap", "si", "lengthOfTheWholeBoneInMillimetres"})
  void stays_silent_when_nothing_is_near(String written) {
    assertThat(Nearest.of(written, KNOWN)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"ab, ab, 0", "ab, ba, 1", "abc, ac, 1", "abc, abcd, 1", "abc, axc, 1", "'', abc, 3"})
  void counts_slips(String a, String b, int slips) {
    assertThat(Nearest.slips(a, b)).isEqualTo(slips);
  }

  @Test
  void does_not_search_for_a_very_long_word() {
    assertThat(Nearest.of("lengthMm".repeat(100_000), KNOWN)).isEmpty();
  }
}
