package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.bonewright.principles.Decisions.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How severities are named, capped, raised and told, and what counts of several. */
class SeverityTest {

  private static final World WORLD = new World("small", Map.of(), Map.of());

  @ParameterizedTest
  @EnumSource(Severity.class)
  void a_severity_is_read_as_it_is_written(Severity severity) {
    assertThat(Severity.of(severity.word())).isEqualTo(severity);
  }

  @ParameterizedTest
  @CsvSource({
    "SITE, 'set by this site, published as major'",
    "BONE, 'this bone, else major'",
    "OUTCOME, 'the fracture united, else major'",
    "DISPUTE, 'the literature disagrees, else major'",
    "REPEAT, 'unmet before, else major'"
  })
  void a_step_says_why_and_what_it_would_be_without(Step step, String words) {
    assertThat(new SeverityStep(step, Severity.MAJOR, Severity.MINOR).inWords()).isEqualTo(words);
  }

  @Test
  void of_several_grades_of_one_world_the_gravest_counts_in_any_order() {
    Verdicts up = new Verdicts();
    up.applies(WORLD);
    up.unmet(WORLD, "minor", "a");
    up.unmet(WORLD, "critical", "a");
    up.unmet(WORLD, "major", "b");
    assertThat(up.of(WORLD)).isEqualTo(new WorldVerdict(VerdictKind.UNMET, Severity.CRITICAL, "a"));
    assertThat(up.faults(WORLD)).isEqualTo(Map.of("a", Severity.CRITICAL, "b", Severity.MAJOR));
    Verdicts down = new Verdicts();
    down.unmet(WORLD, "critical", "a");
    down.unmet(WORLD, "minor", "a");
    assertThat(down.faults(WORLD)).isEqualTo(Map.of("a", Severity.CRITICAL));
  }

  @Test
  void what_does_not_apply_is_not_unmet_whatever_is_found() {
    Verdicts verdicts = new Verdicts();
    verdicts.unmet(WORLD, "critical", "a");
    assertThat(verdicts.of(WORLD).kind()).isEqualTo(VerdictKind.NOT_APPLICABLE);
  }
}
