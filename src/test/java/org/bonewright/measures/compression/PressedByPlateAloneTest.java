package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PressedByPlateAloneTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          compression: {method: 'eccentric-screws'}                   | yes fact
          compression: {method: 'tension-device'}                     | yes fact
          compression: {method: 'clamp'}                              | no fact
          compression: {method: 'none'}, fixation: null               | no fact
          fixation: null                                              | unknown, ask op-1/fixation
          fixation: [{id: 'lag-1', kind: 'lag-screw'}]                | no fact
          compression: null                                           | no or yes assumed, ask op-1/compression/method
          compression: null, concept: null                            | no or yes fact, ask op-1/compression/method
          """)
  void follows_method_and_lag_screws(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0", "{" + stated + "}");
    assertThat(Taken.of("pressed-by-plate-alone", text)).isEqualTo(reads);
  }

  @Test
  void a_nail_is_no_plate() {
    assertThat(Taken.of("pressed-by-plate-alone", CaseText.nailed())).isEqualTo("no fact");
  }
}
