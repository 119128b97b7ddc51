package org.bonewright.measures.infection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Markers are raised anyway for the two weeks after the injury of day 0 and each operation. */
class NormalReactionTest {

  @ParameterizedTest(name = "found on day {0}, operated on day {1}: over {2}")
  @CsvSource({
    "13, 1, false",
    "14, 0, true",
    "14, 1, false",
    "15, 1, true",
    "100, 100, false",
    "113, 100, false",
    "114, 100, true",
    // an operation to come has caused nothing yet
    "99, 100, true",
  })
  void lasts_two_weeks_from_its_own_day(int found, int operated, boolean over) {
    CaseFile file =
        CaseText.plated()
            .with("{findings: [{day: " + found + ", pain: 2}]}")
            .at("/operations/0", "{day: " + operated + "}")
            .file();
    assertThat(NormalReaction.isOver(file.findings().get(0), file.operations())).isEqualTo(over);
  }

  @Test
  void an_operation_without_a_day_may_have_been_the_day_before() {
    CaseFile file =
        CaseText.plated()
            .with("{findings: [{day: 100, pain: 2}]}")
            .at("/operations/0", "{day: null}")
            .file();
    assertThat(NormalReaction.isOver(file.findings().get(0), file.operations())).isFalse();
    assertThat(NormalReaction.isOver(file.findings().get(0), List.of())).isTrue();
  }
}
