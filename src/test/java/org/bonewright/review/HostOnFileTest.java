package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Subject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is named of the host beside a failure that nothing explains. */
class HostOnFileTest {

  private static List<String> before(String... findings) {
    return HostOnFile.before(
        Subject.of(
                CaseText.plated().with("{findings: [" + String.join(", ", findings) + "]}").file())
            .get(0));
  }

  private static String host(int day, String host) {
    return "{day: " + day + ", host: {" + host + "}}";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "smoking: 'current' | smoking",
        "diabetes: 'yes' | diabetes",
        "diabetes: 'yes', hba1cPercent: 8.7 | diabetes with a long-term blood sugar of 8.7 %",
        "drugs: ['nsaid'] | anti-inflammatory drug",
        "drugs: ['steroid'] | steroid",
        "drugs: ['immunosuppressant', 'anticoagulant'] | immunosuppressant"
      })
  void what_slows_union_is_named(String host, String named) {
    assertThat(before(host(1, host))).containsExactly(named);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "smoking: 'never'",
        "smoking: 'stopped'",
        "diabetes: 'no', hba1cPercent: 5.4",
        "diabetes: 'unknown'",
        "drugs: ['anticoagulant']",
        "drugs: []"
      })
  void what_does_not_is_left_out(String host) {
    assertThat(before(host(1, host))).isEmpty();
  }

  @Test
  void what_was_found_last_before_the_operation_counts() {
    assertThat(before(host(0, "smoking: 'current'"), host(1, "smoking: 'stopped'"))).isEmpty();
    assertThat(before(host(1, "smoking: 'never'"), host(90, "smoking: 'current'"))).isEmpty();
  }
}
