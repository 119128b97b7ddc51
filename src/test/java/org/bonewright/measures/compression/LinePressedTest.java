package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinePressedTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          compression: {method: 'none'}               | no fact
          compression: {method: 'clamp'}              | yes fact
          compression: {method: 'eccentric-screws'}   | yes fact
          compression: null                           | yes assumed
          compression: null, concept: null            | no or yes fact, ask op-1/compression/method
          """)
  void follows_the_method(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0", "{" + stated + "}");
    assertThat(Taken.of("line-pressed", text)).isEqualTo(reads);
  }

  @Test
  void relative_stability_presses_nothing() {
    assertThat(Taken.of("line-pressed", CaseText.nailed())).isEqualTo("no assumed");
  }
}
