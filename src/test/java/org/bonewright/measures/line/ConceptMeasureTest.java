package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConceptMeasureTest {

  private static CaseText unstated(CaseText text) {
    return text.at("/operations/0", "{concept: null}");
  }

  @Test
  void is_as_stated_even_against_the_implants() {
    assertThat(Taken.of("concept", CaseText.plated())).isEqualTo("absolute fact");
    assertThat(Taken.of("concept", CaseText.nailed())).isEqualTo("relative fact");
  }

  @ParameterizedTest
  @CsvSource({
    "eccentric-screws, absolute",
    "tension-device, absolute",
    "lag-screw, absolute",
    "none, relative"
  })
  void is_inferred_from_the_handling_of_the_line_under_a_plate(String method, String concept) {
    CaseText text =
        unstated(CaseText.plated())
            .at("/operations/0", "{compression: {method: '" + method + "'}}");
    assertThat(Taken.of("concept", text)).isEqualTo(concept + " assumed");
  }

  @Test
  void is_inferred_as_relative_from_a_nail_or_fixator() {
    assertThat(Taken.of("concept", unstated(CaseText.nailed()))).isEqualTo("relative assumed");
    CaseText fixator =
        unstated(CaseText.nailed())
            .at("/operations/0", "{fixation: [{id: 'f', kind: 'external-fixator'}]}");
    assertThat(Taken.of("concept", fixator)).isEqualTo("relative assumed");
  }

  @Test
  void is_unknown_where_neither_concept_nor_handling_of_the_line_is_recorded() {
    CaseText text = unstated(CaseText.plated()).at("/operations/0", "{compression: null}");
    assertThat(Taken.of("concept", text)).isEqualTo("unknown, ask op-1/concept");
  }

  @Test
  void of_a_plan_that_names_no_compression_is_relative() {
    CaseText text =
        CaseText.plated()
            .redone("plate-bent")
            .at("/plans/0/stages/0", "{compression: null, concept: null}");
    assertThat(Taken.of("concept", text)).isEqualTo("relative assumed");
  }
}
