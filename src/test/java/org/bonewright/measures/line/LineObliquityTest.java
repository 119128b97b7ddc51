package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineObliquityTest {

  @ParameterizedTest(name = "{0}, {1}: {2}")
  @CsvSource({
    "transverse, 12, 12 fact",
    "oblique, 45, 45 fact",
    "spiral, '{min: 60, max: 70}', '60–70 fact, ask injury/obliquityDeg'",
    "transverse, null, '0–29 assumed, ask injury/obliquityDeg'",
    "oblique, null, '30–90 assumed, ask injury/obliquityDeg'",
    "wedge, 45, none: more than one line",
    "segmental, 45, none: more than one line"
  })
  void is_as_stated_or_as_the_pattern_leaves_it(String pattern, String angle, String reads) {
    CaseText text =
        CaseText.plated()
            .at("/injury", "{pattern: '" + pattern + "', obliquityDeg: " + angle + "}");
    assertThat(Taken.of("line-obliquity", text)).isEqualTo(reads);
  }

  @Test
  void of_the_injury_does_not_hold_for_a_nonunion_of_another_pattern() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/injury", "{pattern: 'spiral', obliquityDeg: 60}")
            .with("{findings: [{day: 100, pattern: 'transverse'}]}");
    assertThat(Taken.of("line-obliquity", text)).isEqualTo("0–29 assumed, ask injury/obliquityDeg");
  }

  @Test
  void is_unknown_without_a_pattern_and_none_once_the_zone_is_cut_out() {
    assertThat(Taken.of("line-obliquity", CaseText.bare()))
        .isEqualTo("unknown, ask injury/pattern");
    CaseText cut = CaseText.plated().at("/operations/0", "{resection: [{fromMm: 177, toMm: 183}]}");
    assertThat(Taken.of("line-obliquity", cut))
        .isEqualTo("none: the zone is cut out, two ends meet");
  }

  @Test
  void two_lines_lie_apart_in_a_segmental_fracture_only() {
    assertThat(Taken.of("two-lines-apart", CaseText.plated())).isEqualTo("no fact");
    assertThat(
            Taken.of("two-lines-apart", CaseText.plated().at("/injury", "{pattern: 'segmental'}")))
        .isEqualTo("yes fact");
    assertThat(Taken.of("two-lines-apart", CaseText.bare()))
        .isEqualTo("unknown, ask injury/pattern");
  }
}
