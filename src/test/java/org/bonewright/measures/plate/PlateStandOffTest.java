package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlateStandOffTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          standOffMm: 3                    | 3 fact
          standOffMm: {min: 1, max: 3}     | 1–3 fact, ask op-1/fixation/plate-1/standOffMm
          standOffMm: null                 | unknown, ask op-1/fixation/plate-1/standOffMm
          """)
  void is_as_stated(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/fixation/0", "{" + stated + "}");
    assertThat(Taken.of("plate-stand-off", text)).isEqualTo(reads);
  }

  @Test
  void without_a_plate_there_is_none() {
    assertThat(Taken.of("plate-stand-off", CaseText.nailed())).isEqualTo("none: no plate in place");
    assertThat(Taken.of("plate-stand-off", CaseText.bare()))
        .isEqualTo("unknown, ask op-1/fixation");
  }
}
