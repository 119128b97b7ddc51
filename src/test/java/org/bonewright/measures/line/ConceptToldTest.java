package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConceptToldTest {

  private static final String UNPRESSED = "{compression: {method: 'none'}}";

  private static String told(CaseText text) {
    return Taken.of("concept-told", text);
  }

  @Test
  void is_stated_where_the_file_names_it() {
    assertThat(told(CaseText.plated())).isEqualTo("stated fact");
    assertThat(told(CaseText.nailed())).isEqualTo("stated fact");
  }

  @Test
  void absolute_stability_with_nothing_that_presses_is_contradicted() {
    assertThat(told(CaseText.plated().at("/operations/0", UNPRESSED)))
        .isEqualTo("contradicted fact");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {id: 'lag-1', kind: 'lag-screw'}
          {id: 'w', kind: 'cerclage', atMm: [180]}
          """)
  void a_lag_screw_or_a_wire_may_press_it(String implant) {
    CaseText text =
        CaseText.plated()
            .at(
                "/operations/0",
                "{compression: {method: 'none'}, fixation: ["
                    + implant
                    + ", {id: 'plate-1', kind: 'plate', holes: 8}]}");
    assertThat(told(text)).isEqualTo("stated fact");
  }

  @Test
  void is_inferred_where_it_follows_from_the_rest() {
    assertThat(told(CaseText.nailed().at("/operations/0", "{concept: null}")))
        .isEqualTo("inferred assumed");
  }

  @Test
  void an_old_record_that_leaves_both_open_is_not_known() {
    CaseText open = CaseText.plated().at("/operations/0", "{concept: null, compression: null}");
    assertThat(told(open)).isEqualTo("unknown, ask op-1/concept");
  }

  @Test
  void is_none_where_nothing_holds_the_bone() {
    assertThat(told(CaseText.plated().at("/operations/0", "{fixation: []}")))
        .isEqualTo("none: nothing holds the bone");
  }
}
