package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadTogetherTest {

  private static final ReadTogether TOGETHER = new ReadTogether();

  @ParameterizedTest
  @CsvSource({"yes, yes, false", "yes, no, true", "no, yes, true", "no, no, true"})
  void a_plate_without_a_nail_is_never_read_beside_a_nail(
      String nail, String alone, boolean possible) {
    assertThat(TOGETHER.possible(Map.of("nail-used", nail, "plate-alone", alone)))
        .isEqualTo(possible);
  }

  @Test
  void a_measure_that_reads_the_file_itself_may_stand_beside_anything() {
    assertThat(TOGETHER.table("nail-used")).isEmpty();
    assertThat(TOGETHER.possible(Map.of("nail-used", "yes", "plate-used", "yes"))).isTrue();
  }

  @Test
  void what_the_base_cases_read_together_is_possible() {
    List<String> made =
        EveryMeasure.catalogue().definitions().stream()
            .map(Definition::id)
            .filter(measure -> TOGETHER.table(measure).isPresent())
            .toList();
    assertThat(made).contains("plate-alone");
    for (BaseCase base : BaseCase.all()) {
      for (Subject subject : Subject.of(base.caseFile())) {
        Scene scene = new Scene(subject, EveryMeasure.catalogue());
        for (String measure : made) {
          Map<String, String> read = known(scene, measure);
          assertThat(TOGETHER.possible(read)).as("%s, %s: %s", base.name(), measure, read).isTrue();
        }
      }
    }
  }

  /** The words that are known of a measure and of what it is made of. */
  private static Map<String, String> known(Scene scene, String measure) {
    Map<String, String> read = new TreeMap<>();
    for (String part : TOGETHER.table(measure).orElseThrow().iterator().next().keySet()) {
      Reading reading = scene.read(part);
      if (reading instanceof Reading.Word word && word.possible().size() == 1) {
        read.put(part, word.possible().first());
      } else if (reading instanceof Reading.None) {
        read.put(part, "none");
      }
    }
    return read;
  }
}
