package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

class NonunionTypeTest {

  private static final String ID = "nonunion-type";
  private static final CaseText REDONE = CaseText.plated().redone("plate-bent");
  private static final String UNKNOWN = "unknown, ask findings/vitality";

  private static String after(String findings) {
    return Taken.of(ID, REDONE.with("{findings: [" + findings + "]}"));
  }

  @Test
  void is_the_last_one_found_before_the_operation() {
    CaseText text =
        REDONE.with(
            "{findings: [{day: 100, vitality: 'oligotrophic'}, {day: 190, vitality: 'atrophic'}]}");
    assertThat(Taken.of(ID, text)).isEqualTo("atrophic fact");
    assertThat(Taken.of(ID, text, "op-1")).isEqualTo("none: a first fixation, no nonunion found");
  }

  @Test
  void stands_when_a_later_finding_says_nonunion_and_no_more() {
    assertThat(after("{day: 100, vitality: 'defect'}, {day: 190, diagnosis: 'nonunion'}"))
        .isEqualTo("defect fact");
  }

  @Test
  void is_gone_once_the_bone_heals_or_is_united() {
    String none = "none: united or healing when last seen";
    assertThat(after("{day: 100, vitality: 'atrophic'}, {day: 190, diagnosis: 'united'}"))
        .isEqualTo(none);
    assertThat(after("{day: 100, vitality: 'atrophic'}, {day: 190, diagnosis: 'healing'}"))
        .isEqualTo(none);
  }

  @Test
  void is_asked_for_where_bone_has_not_united_or_is_fixed_again() {
    assertThat(after("{day: 190, diagnosis: 'nonunion'}")).isEqualTo(UNKNOWN);
    assertThat(after("{day: 100, diagnosis: 'healing'}, {day: 190, diagnosis: 'delayed-union'}"))
        .isEqualTo(UNKNOWN);
    assertThat(Taken.of(ID, REDONE)).isEqualTo(UNKNOWN);
  }

  @Test
  void is_asked_for_where_a_nonunion_is_fixed_for_the_first_time() {
    CaseText text = CaseText.plated().with("{findings: [{day: 1, diagnosis: 'nonunion'}]}");
    assertThat(Taken.of(ID, text)).isEqualTo(UNKNOWN);
  }
}
