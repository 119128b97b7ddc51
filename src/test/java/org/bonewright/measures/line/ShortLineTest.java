package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShortLineTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          pattern: 'transverse'                                    | yes fact
          pattern: 'oblique', obliquityDeg: 45                     | yes fact
          pattern: 'oblique', obliquityDeg: 46                     | no fact
          pattern: 'oblique', obliquityDeg: {min: 40, max: 50}     | no or yes fact, ask injury/obliquityDeg
          pattern: 'oblique'                                       | unknown, ask injury/obliquityDeg
          pattern: 'spiral', obliquityDeg: 40                      | no fact
          pattern: 'wedge'                                         | no fact
          pattern: null                                            | unknown, ask injury/pattern
          """)
  void follows_pattern_and_slope(String injury, String reads) {
    CaseText text = CaseText.plated().at("/injury", "{" + injury + "}");
    assertThat(Taken.of("short-line", text)).isEqualTo(reads);
  }

  @Test
  void a_later_pattern_counts_before_that_of_the_injury() {
    CaseText text =
        CaseText.plated()
            .with("{findings: [{day: 1, pattern: 'transverse'}]}")
            .at("/injury", "{pattern: 'spiral'}");
    assertThat(Taken.of("short-line", text)).isEqualTo("yes fact");
  }

  @Test
  void two_cut_ends_make_a_transverse_line() {
    // the zone runs from 179 to 181
    CaseText text =
        CaseText.plated()
            .at("/injury", "{pattern: 'spiral'}")
            .at("/operations/0", "{resection: [{fromMm: 179, toMm: 181}]}");
    assertThat(Taken.of("short-line", text)).isEqualTo("yes fact");
  }
}
