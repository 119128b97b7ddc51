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
          infection: {sinus: 'present'}, defectMm: 31, skin: 'open'                    | 3–4 fact, ask findings/host/asa
          infection: {sinus: 'present'}, defectMm: {min: 20, max: 40}, skin: 'intact', host: {asa: 1} | 1–2 fact, ask findings/defectMm
          """)
  void factors_of_complexity_add_up(String finding, String reads) {
    assertThat(Taken.of("complexity-factors", found(finding), "plan-a")).isEqualTo(reads);
  }
}
