package org.bonewright.measures.infection;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InfectionWorkedUpTest {

  /** A plan after a failed plate, with the signs of day 210. */
  private static CaseText signs(String infection) {
    return CaseText.plated()
        .redone("plate-bent")
        .with("{findings: [{day: 210, infection: {" + infection + "}}]}");
  }

  /** Nothing grew, nothing was sampled, and a plan for it by a team that waits for the result. */
  private static CaseText staged(String... stages) {
    return signs("crpMgL: 4, samples: {taken: 0}")
        .at(
            "/plans/0",
            "{resultPath: 'team', stages: [{id: 'a', "
                + String.join("}, {id: 'b', ", stages)
                + "}]}");
  }

  private static String workedUp(CaseText text) {
    return Taken.of("infection-worked-up", text);
  }

  private static String working(CaseText text) {
    return Taken.reading("infection-worked-up", Taken.subject(text.file(), "plan-a")).working();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          samples: {taken: 5, sameOrganism: 0}                    | yes fact
          samples: {taken: 2, sameOrganism: 0}                    | yes fact
          samples: {taken: 1, sameOrganism: 0}                    | no fact
          samples: {taken: 5, sameOrganism: 1}                    | no fact
          samples: {taken: {min: 1, max: 3}, sameOrganism: 0}     | no or yes fact, ask findings/infection/samples
          samples: {taken: 5, sameOrganism: {min: 0, max: 1}}     | no or yes fact, ask findings/infection/samples
          samples: {taken: 5}                                     | no or yes fact, ask findings/infection/samples
          pus: 'absent'                                           | no or yes fact, ask findings/infection/samples
          """)
  void needs_two_deep_samples_that_grew_nothing(String samples, String reads) {
    assertThat(workedUp(signs("crpMgL: 4, " + samples))).isEqualTo(reads);
  }

  @Test
  void needs_a_marker_of_the_last_thirty_days() {
    String clean = "infection: {crpMgL: 4, samples: {taken: 5, sameOrganism: 0}}";
    CaseText thirty =
        signs("").with("{findings: [{day: 210, " + clean + "}, {day: 240, pain: 2}]}");
    CaseText older = signs("").with("{findings: [{day: 210, " + clean + "}, {day: 241, pain: 2}]}");
    assertThat(workedUp(thirty)).isEqualTo("yes fact");
    assertThat(workedUp(older)).isEqualTo("no fact");
  }

  @Test
  void an_operation_of_the_past_may_have_had_markers_that_no_finding_names() {
    CaseText past = CaseText.plated().with("{findings: [{day: 1, infection: {pus: 'absent'}}]}");
    assertThat(workedUp(past))
        .isEqualTo("no or yes fact, ask findings/infection/crpMgL and findings/infection/samples");
    CaseText marked = past.with("{findings: [{day: 1, infection: {crpMgL: 4}}]}");
    assertThat(workedUp(marked)).isEqualTo("no or yes fact, ask findings/infection/samples");
    CaseText bare = marked.at("/operations/0", "{fixation: []}");
    assertThat(workedUp(bare))
        .isEqualTo("no or yes fact, ask findings/infection/samples and op-1/samples");
  }

  @ParameterizedTest(name = "first stage {0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          samples: {deepSamples: 5}                                                            | yes fact
          samples: {deepSamples: 1}                                                            | yes fact
          samples: {deepSamples: 0}                                                            | no fact
          samples: {deepSamples: {min: 0, max: 5}}                                             | no fact
          samples: {deepSamples: 5}, biology: [{kind: 'spacer'}]                               | yes fact
          samples: {deepSamples: 5}, biology: [{kind: 'allograft'}]                            | no fact
          samples: {deepSamples: 5}, fixation: [{id: 'f', kind: 'external-fixator'}]           | yes fact
          samples: {deepSamples: 5}, fixation: [{id: 'p', kind: 'plate'}]                      | no fact
          samples: {deepSamples: 5}, fixation: [{id: 'n', kind: 'nail'}]                       | no fact
          samples: {deepSamples: 5}, fixation: [{id: 's', kind: 'strut', where: 'onlay', fromMm: 150, toMm: 210}]                      | no fact
          """)
  void or_sampling_ahead_of_graft_and_metal(String stage, String reads) {
    assertThat(workedUp(staged(stage, "biology: [{kind: 'reamer-graft'}]"))).isEqualTo(reads);
  }

  @Test
  void or_somebody_who_acts_on_the_result() {
    CaseText text = staged("samples: {deepSamples: 5}", "biology: [{kind: 'reamer-graft'}]");
    assertThat(workedUp(text.without("/plans/0/resultPath"))).isEqualTo("no fact");
  }

  @Test
  void the_path_of_another_plan_does_not_count() {
    String stages = "stages: [{id: 'a', samples: {deepSamples: 5}}]";
    CaseText text =
        signs("crpMgL: 4, samples: {taken: 0}")
            .with(
                "{plans: [{id: 'plan-a', resultPath: 'team', "
                    + stages
                    + "}, {id: 'plan-b', "
                    + stages
                    + "}]}");
    assertThat(Taken.of("infection-worked-up", text, "plan-a")).isEqualTo("yes fact");
    assertThat(Taken.of("infection-worked-up", text, "plan-b")).isEqualTo("no fact");
  }

  @Test
  void says_which_of_the_two_it_was() {
    assertThat(working(signs("crpMgL: 4, samples: {taken: 5, sameOrganism: 0}")))
        .isEqualTo("deep samples negative");
    assertThat(working(staged("samples: {deepSamples: 5}"))).isEqualTo("sampled first");
  }
}
