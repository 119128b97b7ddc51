package org.bonewright.measures.infection;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Subject;
import org.junit.jupiter.api.Test;

/** Where a stage stands to the one that treats the infection. */
class InfectionStagesTest {

  private static final String TREATS = "{debridement: 'yes', antibioticWeeks: 6}";

  private static InfectionStages of(String subject, String... care) {
    StringBuilder stages = new StringBuilder();
    for (int i = 0; i < care.length; i++) {
      stages
          .append("{id: 'stage-%d', infectionCare: %s}".formatted(i + 1, care[i]))
          .append(i + 1 < care.length ? ", " : "");
    }
    CaseText text =
        CaseText.plated().with("{plans: [{id: 'plan-a', stages: [%s]}]}".formatted(stages));
    return Subject.of(text.file()).stream()
        .filter(s -> s.id().equals(subject))
        .map(InfectionStages::of)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_stage_that_treats_it_goes_before_the_one_after_it() {
    assertThat(of("plan-a/stage-1", TREATS, "{}")).isEqualTo(new InfectionStages(false, true));
    assertThat(of("plan-a/stage-2", TREATS, "{}")).isEqualTo(new InfectionStages(true, true));
  }

  @Test
  void the_plan_as_a_whole_begins_untreated() {
    assertThat(of("plan-a", TREATS, "{}")).isEqualTo(new InfectionStages(false, true));
  }

  @Test
  void nothing_follows_where_the_last_stage_treats_it() {
    assertThat(of("plan-a/stage-1", TREATS)).isEqualTo(new InfectionStages(false, false));
    assertThat(of("plan-a/stage-1", "{}", TREATS)).isEqualTo(new InfectionStages(false, false));
  }

  @Test
  void debridement_without_antibiotics_or_the_other_way_round_treats_nothing() {
    assertThat(of("plan-a/stage-2", "{debridement: 'yes'}", "{}").treatedBefore()).isFalse();
    assertThat(of("plan-a/stage-2", "{antibioticWeeks: 6}", "{}").treatedBefore()).isFalse();
    assertThat(of("plan-a/stage-2", "{debridement: 'unknown', antibioticWeeks: 6}", "{}"))
        .isEqualTo(new InfectionStages(false, false));
  }

  @Test
  void a_past_operation_belongs_to_no_plan() {
    assertThat(of("op-1", TREATS, "{}")).isEqualTo(new InfectionStages(false, false));
  }
}
