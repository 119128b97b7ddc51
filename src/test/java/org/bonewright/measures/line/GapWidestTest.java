package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapWidestTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          gapNearMm: 1, gapFarMm: 3                                 | 3 fact
          gapNearMm: 2, gapFarMm: 0                                 | 2 fact
          gapNearMm: 0, gapFarMm: 0                                 | 0 fact
          gapNearMm: {min: 0, max: 2}, gapFarMm: 3                  | 3 fact
          gapNearMm: {min: 0, max: 2}, gapFarMm: 1                  | 1–2 fact, ask op-1/reduction/gapNearMm
          gapNearMm: {min: 0, max: 2}, gapFarMm: {min: 1, max: 4}   | 1–4 fact, ask op-1/reduction/gapNearMm and op-1/reduction/gapFarMm
          gapNearMm: 1, gapFarMm: null                              | 1–∞ fact, ask op-1/reduction/gapFarMm
          gapNearMm: null, gapFarMm: 3                              | 3–∞ fact, ask op-1/reduction/gapNearMm
          gapNearMm: null, gapFarMm: null                           | unknown, ask op-1/reduction/gapNearMm and op-1/reduction/gapFarMm
          """)
  void is_the_wider_of_the_two_gaps(String gaps, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/reduction", "{" + gaps + "}");
    assertThat(Taken.of("gap-widest", text)).isEqualTo(reads);
  }

  @Test
  void both_gaps_are_told() {
    CaseText text = CaseText.plated().at("/operations/0/reduction", "{gapNearMm: null}");
    assertThat(Taken.reading("gap-widest", Taken.subject(text.file(), "op-1")).working())
        .isEqualTo("near not stated, far 1 mm");
  }
}
