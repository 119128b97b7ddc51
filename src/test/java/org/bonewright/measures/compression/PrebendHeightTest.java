package org.bonewright.measures.compression;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrebendHeightTest {

  private static final String ID = "prebend-height";

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          prebendMm: 1.5                     | 1.5 fact
          prebendMm: 3, prebent: 'yes'       | 3 fact
          prebendMm: {min: 1, max: 2}        | 1–2 fact, ask op-1/compression/prebendMm
          # the usual 1 to 2 mm
          prebent: 'yes'                     | 1–2 assumed, ask op-1/compression/prebendMm
          prebent: 'no'                      | 0 fact
          prebent: 'unknown'                 | unknown, ask op-1/compression/prebent
          prebent: null                      | unknown, ask op-1/compression/prebent
          """)
  void is_as_stated_or_the_usual_one(String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/compression", "{" + stated + "}");
    assertThat(Taken.of(ID, text)).isEqualTo(reads);
  }

  @Test
  void a_bend_that_a_plan_does_not_name_is_not_planned() {
    CaseText text = CaseText.plated().redone("plate-bent");
    assertThat(Taken.of(ID, text)).isEqualTo("0 fact");
    assertThat(Taken.of(ID, text.at("/plans/0/stages/0/compression", "{prebent: 'unknown'}")))
        .isEqualTo("unknown, ask plan-a/stage-1/compression/prebent");
  }
}
