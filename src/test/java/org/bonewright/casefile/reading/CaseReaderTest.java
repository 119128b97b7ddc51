package org.bonewright.casefile.reading;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.junit.jupiter.api.Test;

class CaseReaderTest {

  private final CaseReader reader = new CaseReader();

  @Test
  void reads_a_case_in_which_every_field_occurs() {
    Reading reading = reader.read(SoundFile.text(CaseFile.class).getBytes(UTF_8));
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.caseFile()).isPresent();
  }

  @Test
  void gives_every_problem_and_no_case() {
    Reading reading =
        reader.read("{\"referense\": \"a\", \"provenance\": \"Clinical\"}".getBytes(UTF_8));
    assertThat(reading.caseFile()).isEmpty();
    assertThat(reading.problems())
        .extracting(Problem::pointer)
        .contains("/schema", "/reference", "/bone", "/referense", "/provenance");
    assertThat(reading.problems())
        .extracting(Problem::hint)
        .contains(
            Optional.of("Did you mean \"reference\"?"), Optional.of("Did you mean \"clinical\"?"));
  }

  @Test
  void a_reading_holds_either_a_case_or_an_error() {
    assertThatThrownBy(() -> new Reading(Optional.empty(), List.of(Problem.warning("", "a", "b"))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
