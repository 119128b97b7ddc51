package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StatedQuantityTest {

  @ParameterizedTest(name = "{0}, {1}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          contact-percent | contactPercent: 75                  | 75 fact
          contact-percent | contactPercent: {min: 50, max: 75}  | 50–75 fact, ask op-1/reduction/contactPercent
          contact-percent | contactPercent: null                | unknown, ask op-1/reduction/contactPercent
          gap-far         | gapFarMm: 3                         | 3 fact
          gap-far         | gapFarMm: {min: 0, max: 2}          | 0–2 fact, ask op-1/reduction/gapFarMm
          gap-far         | gapFarMm: null                      | unknown, ask op-1/reduction/gapFarMm
          step-at-line    | translationMm: 2                    | 2 fact
          step-at-line    | translationMm: {min: 0, max: 2}     | 0–2 fact, ask op-1/reduction/translationMm
          step-at-line    | translationMm: null                 | unknown, ask op-1/reduction/translationMm
          """)
  void is_taken_as_it_is(String measure, String stated, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/reduction", "{" + stated + "}");
    assertThat(Taken.of(measure, text)).isEqualTo(reads);
  }

  @Test
  void is_unknown_where_the_reduction_is_not_described_in_a_plan_as_in_the_past() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/plans/0/stages/0", "{reduction: null}")
            .at("/operations/0", "{reduction: null}");
    assertThat(Taken.of("step-at-line", text))
        .isEqualTo("unknown, ask plan-a/stage-1/reduction/translationMm");
    assertThat(Taken.of("step-at-line", text, "op-1"))
        .isEqualTo("unknown, ask op-1/reduction/translationMm");
  }
}
