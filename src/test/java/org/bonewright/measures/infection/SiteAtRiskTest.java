package org.bonewright.measures.infection;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SiteAtRiskTest {

  @Test
  void a_closed_injury_without_an_earlier_implant_is_not() {
    assertThat(Taken.of("site-at-risk", CaseText.plated())).isEqualTo("no fact");
  }

  @ParameterizedTest
  @ValueSource(strings = {"i", "ii", "iiia", "iiib", "iiic"})
  void an_open_injury_of_any_grade_is(String grade) {
    CaseText text = CaseText.plated().at("/injury", "{openGrade: '" + grade + "'}");
    assertThat(Taken.of("site-at-risk", text)).isEqualTo("yes fact");
  }

  @Test
  void an_earlier_implant_is_enough_and_the_grade_need_not_be_known() {
    CaseText text = CaseText.plated().redone("plate-bent").at("/injury", "{openGrade: null}");
    assertThat(Taken.of("site-at-risk", text)).isEqualTo("yes fact");
  }

  @Test
  void a_first_fixation_needs_the_grade() {
    CaseText text = CaseText.plated().at("/injury", "{openGrade: null}");
    assertThat(Taken.of("site-at-risk", text)).isEqualTo("unknown, ask injury/openGrade");
  }
}
