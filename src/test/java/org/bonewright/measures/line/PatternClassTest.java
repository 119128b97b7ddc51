package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatternClassTest {

  @ParameterizedTest
  @CsvSource({
    "transverse, simple",
    "oblique, simple",
    "spiral, simple",
    "wedge, wedge",
    "multifragmentary, multifragmentary",
    "segmental, multifragmentary",
    "segmental-defect, defect"
  })
  void follows_the_pattern_of_the_injury(String pattern, String word) {
    CaseText text = CaseText.plated().at("/injury", "{pattern: '" + pattern + "'}");
    assertThat(Taken.of("pattern-class", text)).isEqualTo(word + " fact");
  }

  @Test
  void is_unknown_where_no_pattern_is_stated() {
    assertThat(Taken.of("pattern-class", CaseText.bare())).isEqualTo("unknown, ask injury/pattern");
  }

  @Test
  void follows_what_was_found_before_the_operation() {
    CaseText text =
        CaseText.plated()
            .at("/operations/0", "{day: 100}")
            .with(
                "{findings: [{day: 90, pattern: 'segmental-defect'}, {day: 120, pattern: 'wedge'}]}");
    assertThat(Taken.of("pattern-class", text)).isEqualTo("defect fact");
  }
}
