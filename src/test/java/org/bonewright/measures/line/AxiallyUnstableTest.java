package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxiallyUnstableTest {

  private static CaseText fracture(String pattern, String contact) {
    return CaseText.nailed()
        .at("/injury", "{pattern: " + pattern + "}")
        .at("/operations/0/reduction", "{contactPercent: " + contact + "}");
  }

  @ParameterizedTest(name = "transverse, contact {0} %: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          50                   | no fact
          49.9                 | yes fact
          {min: 50, max: 100}  | no fact
          {min: 0, max: 49}    | yes fact
          {min: 40, max: 60}   | no or yes fact, ask op-1/reduction/contactPercent
          null                 | no or yes fact, ask op-1/reduction/contactPercent
          """)
  void a_transverse_line_stands_on_half_of_its_circumference(String contact, String reads) {
    assertThat(Taken.of("axially-unstable", fracture("'transverse'", contact))).isEqualTo(reads);
  }

  @ParameterizedTest
  @CsvSource({"oblique", "spiral", "wedge", "multifragmentary", "segmental", "segmental-defect"})
  void any_other_pattern_can_shorten_whatever_the_contact(String pattern) {
    assertThat(Taken.of("axially-unstable", fracture("'" + pattern + "'", "100")))
        .isEqualTo("yes fact");
  }

  @Test
  void nothing_can_be_told_without_the_pattern() {
    assertThat(Taken.of("axially-unstable", fracture("null", "80")))
        .isEqualTo("unknown, ask injury/pattern");
  }

  @Test
  void the_pattern_is_asked_for_even_where_a_cut_through_the_zone_leaves_a_simple_line() {
    CaseText cut =
        fracture("null", "80")
            .at("/operations/0", "{resection: [{fromMm: 170, toMm: 190}]}")
            .at("/operations/0/reduction", "{gapNearMm: 0, gapFarMm: 1}");
    assertThat(Taken.of("pattern-class", cut)).isEqualTo("simple fact");
    assertThat(Taken.of("axially-unstable", cut)).isEqualTo("unknown, ask injury/pattern");
  }
}
