package org.bonewright.measures.infection;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannedActionTest {

  private static CaseText past(String action) {
    return CaseText.plated().at("/operations/0", "{" + action + "}");
  }

  private static CaseText plan(String... stages) {
    StringBuilder list = new StringBuilder();
    for (int i = 0; i < stages.length; i++) {
      list.append(i == 0 ? "" : ", ").append("{id: 'stage-").append(i + 1).append("'");
      list.append(stages[i].isEmpty() ? "" : ", " + stages[i]).append("}");
    }
    return CaseText.plated().redone("infection").at("/plans/0", "{stages: [" + list + "]}");
  }

  @ParameterizedTest(name = "{0}, {1}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          deep-samples      | samples: {deepSamples: 5}                   | as stated
          deep-samples      | samples: null                               | no sampling planned
          histology-sample  | samples: {deepSamples: 5, histology: 'no'}  | stated as not taken
          histology-sample  | samples: {deepSamples: 5}                   | no histology planned
          """)
  void tells_what_a_plan_rules_out_from_what_it_leaves_out(
      String measure, String samples, String working) {
    CaseText text = plan(samples);
    assertThat(Taken.reading(measure, Taken.subject(text.file(), "plan-a")).working())
        .isEqualTo(working);
  }

  @Nested
  class DeepSamples {

    @ParameterizedTest(name = "{0}: past {1}, plan {2}")
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '"',
        textBlock =
            """
            samples: {deepSamples: 5}                   | 5 fact                             | 5 fact
            samples: {deepSamples: 0}                   | 0 fact                             | 0 fact
            samples: {deepSamples: {min: 3, max: 5}}    | 3–5 fact, ask op-1/samples         | 3–5 fact, ask plan-a/stage-1/samples
            samples: null                               | unknown, ask op-1/samples          | 0 fact
            """)
    void are_counted(String samples, String past, String plan) {
      assertThat(Taken.of("deep-samples", past(samples))).isEqualTo(past);
      assertThat(Taken.of("deep-samples", plan(samples))).isEqualTo(plan);
    }

    @Test
    void of_several_stages_the_largest_number_counts() {
      CaseText text = plan("samples: {deepSamples: 5}", "", "samples: {deepSamples: 3}");
      assertThat(Taken.of("deep-samples", text)).isEqualTo("5 fact");
      assertThat(Taken.of("deep-samples", text, "plan-a/stage-2")).isEqualTo("0 fact");
    }
  }

  @Nested
  class Histology {

    @ParameterizedTest(name = "{0}: past {1}, plan {2}")
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '"',
        textBlock =
            """
            samples: {deepSamples: 5, histology: 'yes'}      | yes fact                   | yes fact
            samples: {deepSamples: 5, histology: 'no'}       | no fact                    | no fact
            samples: {deepSamples: 5, histology: 'unknown'}  | unknown, ask op-1/samples  | unknown, ask plan-a/stage-1/samples
            samples: {deepSamples: 5}                        | unknown, ask op-1/samples  | no fact
            samples: null                                    | unknown, ask op-1/samples  | no fact
            """)
    void is_as_stated(String samples, String past, String plan) {
      assertThat(Taken.of("histology-sample", past(samples))).isEqualTo(past);
      assertThat(Taken.of("histology-sample", plan(samples))).isEqualTo(plan);
    }

    @Test
    void one_stage_is_enough() {
      CaseText text =
          plan(
              "samples: {deepSamples: 5, histology: 'no'}",
              "samples: {deepSamples: 3, histology: 'yes'}");
      assertThat(Taken.of("histology-sample", text)).isEqualTo("yes fact");
    }
  }

  @Nested
  class CultureDays {

    @ParameterizedTest(name = "{0}: past {1}, plan {2}")
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '"',
        textBlock =
            """
            samples: {deepSamples: 5, cultureDays: 14}                   | 14 fact                                  | 14 fact
            samples: {deepSamples: 5, cultureDays: {min: 7, max: 14}}    | 7–14 fact, ask op-1/samples/cultureDays  | 7–14 fact, ask plan-a/stage-1/samples/cultureDays
            # the samples are planned, how long they are cultured is a quantity left open
            samples: {deepSamples: 5}                                    | unknown, ask op-1/samples/cultureDays    | unknown, ask plan-a/stage-1/samples/cultureDays
            samples: null                                                | unknown, ask op-1/samples/cultureDays    | none: no sampling planned
            """)
    void are_as_stated(String samples, String past, String plan) {
      assertThat(Taken.of("culture-days", past(samples))).isEqualTo(past);
      assertThat(Taken.of("culture-days", plan(samples))).isEqualTo(plan);
    }

    @Test
    void of_several_stages_the_longest_counts() {
      CaseText text =
          plan(
              "samples: {deepSamples: 5, cultureDays: 7}",
              "samples: {deepSamples: 5, cultureDays: 14}");
      assertThat(Taken.of("culture-days", text)).isEqualTo("14 fact");
    }
  }

  @Nested
  class DirectedAtInfection {

    private static final String ALL =
        "infectionCare: {debridement: 'yes', antibioticWeeks: 6}, samples: {deepSamples: 5}";

    private static String changed(CaseText text, String patch) {
      return Taken.of("infection-directed", text.at("/operations/0", "{" + patch + "}"));
    }

    private static String changedPlan(String patch) {
      return Taken.of("infection-directed", plan(ALL).at("/plans/0/stages/0", "{" + patch + "}"));
    }

    @ParameterizedTest(name = "{0}: past {1}, plan {2}")
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '"',
        textBlock =
            """
            samples: {deepSamples: 5}                         | yes                               | yes
            infectionCare: {debridement: 'no'}                | no                                | no
            samples: {deepSamples: 0}                         | no                                | no
            samples: {deepSamples: 1}                         | yes                               | yes
            samples: {deepSamples: {min: 0, max: 1}}          | unknown                           | unknown
            infectionCare: {antibioticWeeks: 0}               | no                                | no
            infectionCare: {debridement: 'unknown'}           | unknown                           | unknown
            samples: {deepSamples: {min: 0, max: 5}}          | unknown                           | unknown
            infectionCare: {antibioticWeeks: {min: 0, max: 6}} | unknown                          | unknown
            # what is absent is unknown in the past and not planned in a plan
            infectionCare: {debridement: null}                | unknown                           | no
            samples: null                                     | unknown                           | no
            infectionCare: {antibioticWeeks: null}            | unknown                           | no
            infectionCare: null                               | unknown                           | no
            # one part that is certainly lacking is enough
            infectionCare: null, samples: {deepSamples: 0}    | no                                | no
            """)
    void takes_debridement_samples_and_antibiotics(String change, String past, String plan) {
      assertThat(changed(past(ALL), change)).isEqualTo(expected(past, "op-1"));
      assertThat(changedPlan(change)).isEqualTo(expected(plan, "plan-a/stage-1"));
    }

    private static String expected(String word, String step) {
      return word.equals("unknown") ? "unknown, ask " + step + "/infectionCare" : word + " fact";
    }

    @Test
    void the_parts_may_be_spread_over_stages() {
      CaseText text =
          plan(
              "infectionCare: {debridement: 'yes'}, samples: {deepSamples: 5}",
              "infectionCare: {antibioticWeeks: 6}");
      assertThat(Taken.of("infection-directed", text)).isEqualTo("yes fact");
      assertThat(Taken.of("infection-directed", text, "plan-a/stage-1")).isEqualTo("no fact");
    }
  }
}
