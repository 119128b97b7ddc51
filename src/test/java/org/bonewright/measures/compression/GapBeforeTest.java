package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapBeforeTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          gapBeforeMm: 1.5                   | 1.5 fact
          gapBeforeMm: {min: 1, max: 3}      | 1–3 fact, ask op-1/compression/gapBeforeMm
          gapBeforeMm: null                  | unknown, ask op-1/compression/gapBeforeMm
          method: 'none', gapBeforeMm: 2     | none: nothing compresses the line
          """)
  void is_as_stated(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/compression", "{" + stated + "}");
    assertThat(Taken.of("gap-before-compression", text)).isEqualTo(reads);
  }

  @Test
  void is_asked_for_in_a_plan_as_in_the_past() {
    assertThat(Taken.of("gap-before-compression", CaseText.plated().redone("plate-bent")))
        .isEqualTo("unknown, ask plan-a/stage-1/compression/gapBeforeMm");
  }
}
