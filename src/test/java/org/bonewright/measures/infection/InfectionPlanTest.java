package org.bonewright.measures.infection;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan does about infection; a finding of day 100 is the latest. */
class InfectionPlanTest {

  private static CaseText plan(String stage, String infection) {
    return CaseText.plated()
        .at(
            "",
            "{findings: [{day: 60, infection: {crpMgL: 9}}, {day: 100, infection: "
                + infection
                + "}], plans: [{id: 'plan-a', stages: [{id: 'stage-1', "
                + stage
                + "}]}]}");
  }

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          infection-excision      | fixation: []                                            | no fact
          infection-excision      | infectionCare: {debridement: 'yes'}                     | yes fact
          infection-excision      | infectionCare: {debridement: 'no'}                      | no fact
          infection-excision      | infectionCare: {debridement: 'unknown'}                 | unknown, ask plan-a/stage-1/infectionCare
          infection-parts-missing | fixation: []                                            | 4 fact
          infection-parts-missing | infectionCare: {deadSpace: 'yes', softTissueCover: 'yes', antibioticWeeks: 6, team: 'yes'} | 0 fact
          infection-parts-missing | infectionCare: {deadSpace: 'yes', team: 'no'}           | 3 fact
          infection-parts-missing | infectionCare: {deadSpace: 'unknown', team: 'unknown'}  | 2–4 fact, ask plan-a/stage-1/infectionCare
          infection-parts-missing | infectionCare: {antibioticWeeks: 0}                     | 4 fact
          first-stage-puts-in     | fixation: [{id: 's', kind: 'strut', where: 'onlay', fromMm: 150, toMm: 210}]                    | graft fact
          first-stage-puts-in     | fixation: [], biology: [{kind: 'allograft'}]            | graft fact
          first-stage-puts-in     | fixation: [], biology: [{kind: 'spacer'}]               | neither fact
          first-stage-puts-in     | fixation: [{id: 'n', kind: 'nail'}]                     | plate-or-nail fact
          first-stage-puts-in     | fixation: [{id: 'f', kind: 'external-fixator'}]         | neither fact
          result-path-given       | fixation: []                                            | no fact
          """)
  void reads_what_is_planned(String measure, String stage, String reads) {
    assertThat(Taken.of(measure, plan(stage, "{crpMgL: 3}"), "plan-a")).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}: {1} markers")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          # the CRP of day 60 is 40 days old
          {esrMmH: 8}                               | 1 fact
          {crpMgL: 3, esrMmH: 8}                    | 2 fact
          {crpMgL: 3, esrMmH: 8, whiteCellsG9L: 6}  | 3 fact
          {pus: 'absent'}                           | 0 fact
          """)
  void counts_markers_that_are_fresh(String infection, String reads) {
    assertThat(Taken.of("markers-taken", plan("fixation: []", infection), "plan-a"))
        .isEqualTo(reads);
  }

  @Test
  void names_what_makes_a_first_stage_put_in_graft() {
    CaseText strut =
        plan("fixation: [{id: 's', kind: 'strut', where: 'onlay', fromMm: 150, toMm: 210}]", "{}");
    CaseText both = strut.at("/plans/0/stages/0", "{biology: [{kind: 'allograft'}]}");
    assertThat(firstStage(strut).working()).isEqualTo("strut");
    assertThat(firstStage(both).working()).isEqualTo("graft");
  }

  private static Reading firstStage(CaseText text) {
    return Taken.reading("first-stage-puts-in", Taken.subject(text.file(), "plan-a"));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          biology: [], fixation: []      | neither fact
          biology: null, fixation: []    | unknown, ask op-1/biology
          biology: [], fixation: null    | unknown, ask op-1/biology
          biology: null                  | unknown, ask op-1/biology
          """)
  void leaves_open_what_an_operation_of_the_past_put_in_where_it_does_not_say(
      String change, String reads) {
    CaseText text = CaseText.plated().at("/operations/0", "{" + change + "}");
    assertThat(Taken.of("first-stage-puts-in", text)).isEqualTo(reads);
  }

  @Test
  void counts_a_marker_of_thirty_days_before_the_latest_finding_and_no_older_one() {
    CaseText text = plan("fixation: []", "{esrMmH: 8}");
    CaseText thirty =
        text.with("{findings: [{day: 70, infection: {crpMgL: 9}}, {day: 100, pain: 2}]}");
    CaseText older =
        text.with("{findings: [{day: 69, infection: {crpMgL: 9}}, {day: 100, pain: 2}]}");
    assertThat(Taken.of("markers-taken", thirty)).isEqualTo("1 fact");
    assertThat(Taken.of("markers-taken", older)).isEqualTo("0 fact");
  }

  @Test
  void leaves_open_which_markers_were_taken_before_an_operation_of_the_past() {
    assertThat(Taken.of("markers-taken", CaseText.plated())).startsWith("0–3 fact");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {antibioticFreeDays: 20}  | 20 fact
          {crpMgL: 3}               | unknown, ask findings/infection/antibioticFreeDays
          """)
  void reads_how_long_no_antibiotic_was_given(String infection, String reads) {
    assertThat(Taken.of("antibiotic-free-days", plan("fixation: []", infection), "plan-a"))
        .isEqualTo(reads);
  }
}
