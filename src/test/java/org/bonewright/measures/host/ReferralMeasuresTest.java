package org.bonewright.measures.host;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One operation failed, and a plan is drawn up. */
class ReferralMeasuresTest {

  private static final CaseText PLANNED = CaseText.plated().redone("plate-bent");

  /** A sinus, and nothing else that makes it complex. */
  private static final String CLEAR =
      "infection: {sinus: 'present'}, defectMm: 0, skin: 'intact', host: {asa: 1}";

  private static final String SCREEN =
      "vitaminDNgMl: 30, calciumMmolL: 2.3, phosphateMmolL: 1, pthPgMl: 40";

  private static CaseText found(String finding) {
    return PLANNED.with("{findings: [{day: 210, " + finding + "}]}");
  }

  @ParameterizedTest(name = "host {0}, plan {1}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {}         | {}                          | no record
          {}         | {endocrineReferral: 'yes'}  | yes record
          {}         | {endocrineReferral: 'no'}   | no record
          {S}        | {}                          | no record
          {S, tshMuL: 2} | {}                      | yes record
          """)
  void metabolism_is_looked_into_by_referral_or_by_five_values(
      String host, String plan, String reads) {
    CaseText text = found("host: " + host.replace("S", SCREEN)).at("/plans/0", plan);
    assertThat(Taken.of("endocrine-check", text, "plan-a")).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} reads {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {drugs: []}        | yes record
          {drugs: ['nsaid']} | yes record
          {}                 | no record
          """)
  void a_list_of_drugs_is_on_file_even_where_it_is_empty(String host, String reads) {
    assertThat(Taken.of("drugs-listed", found("host: " + host), "plan-a")).isEqualTo(reads);
  }

  @Test
  void a_team_has_seen_a_plan_that_says_where() {
    assertThat(Taken.of("team-review", PLANNED, "plan-a")).isEqualTo("no fact");
    assertThat(
            Taken.of(
                "team-review", PLANNED.at("/plans/0", "{discussion: 'Meeting, day 12'}"), "plan-a"))
        .isEqualTo("yes fact");
    assertThat(Taken.of("team-review", PLANNED, "op-1")).isEqualTo("none: not a plan");
  }

  @ParameterizedTest(name = "revisions {0} and {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          failed  | failed  | 2 fact
          failed  | united  | 1 fact
          failed  | unknown | 1–2 fact, ask operations/outcome
          unknown | unknown | 1–2 fact, ask operations/outcome
          united  | unknown | 1 fact
          """)
  void two_revisions_that_failed_are_a_factor_and_the_first_fixation_is_none(
      String second, String third, String reads) {
    String operation =
        ",{\"id\":\"%s\",\"day\":%d,\"fixation\":[],\"outcome\":{\"result\":\"%s\"}}";
    CaseText text =
        CaseText.of(
            found(CLEAR)
                .toString()
                .replace(
                    "],\"plans\"",
                    operation.formatted("op-2", 202, second)
                        + operation.formatted("op-3", 204, third)
                        + "],\"plans\""));
    assertThat(Taken.of("complexity-factors", text, "plan-a")).isEqualTo(reads);
  }

  @Test
  void poor_bone_is_a_factor_and_all_are_named() {
    assertThat(working(found(CLEAR))).isEqualTo("infection");
    CaseText stripped =
        found(CLEAR)
            .at("/bone", "{quality: []}")
            .at(
                "/operations/0/fixation/0",
                "{screws: [{at: [1, 3], type: 'cortical', state: 'stripped'}]}");
    assertThat(working(stripped)).isEqualTo("infection, poor bone");
    assertThat(working(PLANNED)).isEqualTo("none certain");
  }

  private static String working(CaseText text) {
    return Taken.reading("complexity-factors", Taken.subject(text.file(), "plan-a")).working();
  }

  @ParameterizedTest(name = "{0} reads {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # thick bone, no revision failed; the sinus confirms infection
          infection: {sinus: 'present'}, defectMm: 0, skin: 'intact', host: {asa: 1}   | 1 fact
          infection: {sinus: 'present'}, defectMm: 31, skin: 'intact', host: {asa: 1}  | 2 fact
          infection: {sinus: 'present'}, defectMm: 30, skin: 'intact', host: {asa: 2}  | 1 fact
          infection: {sinus: 'present'}, defectMm: 31, skin: 'open', host: {asa: 3}    | 4 fact
          infection: {sinus: 'present'}, defectMm: 0, skin: 'intact', host: {asa: 2}   | 1 fact
          infection: {sinus: 'present'}, defectMm: 0, skin: 'intact', host: {asa: {min: 2, max: 3}} | 1–2 fact, ask findings/host/asa
          infection: {sinus: 'present'}, defectMm: {min: 20, max: 30}, skin: 'intact', host: {asa: 1} | 1 fact
          infection: {sinus: 'present'}, defectMm: 31, skin: 'open'                    | 3–4 fact, ask findings/host/asa
          infection: {sinus: 'present'}, defectMm: {min: 20, max: 40}, skin: 'intact', host: {asa: 1} | 1–2 fact, ask findings/defectMm
          """)
  void factors_of_complexity_add_up(String finding, String reads) {
    assertThat(Taken.of("complexity-factors", found(finding), "plan-a")).isEqualTo(reads);
  }
}
