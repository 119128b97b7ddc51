package org.bonewright.casefile.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.bonewright.casefile.reading.Cabinets.accepted;
import static org.bonewright.casefile.reading.Cabinets.read;
import static org.bonewright.casefile.reading.Cabinets.refused;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordReaderTest {

  @Nested
  class binds {

    @Test
    void every_type_of_component() {
      Cabinet cabinet = accepted(file -> file.put("depthMm", 40.5).put("facing", "medial"));
      assertThat(cabinet.label()).isEqualTo("Some words");
      assertThat(cabinet.shelves()).isEqualTo(1);
      assertThat(cabinet.weightKg()).isEqualTo(200);
      assertThat(cabinet.wood()).isEqualTo(Cabinet.Wood.OAK);
      assertThat(cabinet.depthMm()).isEqualTo(Quantity.of(40.5));
      assertThat(cabinet.facing()).isEqualTo(new Direction(270));
      assertThat(cabinet.tools())
          .containsExactly(
              new Cabinet.Saw(Optional.of(2)),
              new Cabinet.Hammer(5),
              new Cabinet.Drill(Optional.of("Some words")));
      assertThat(cabinet.keys()).containsExactly(1, 1);
      assertThat(cabinet.oiled()).contains(true);
      assertThat(cabinet.holesMm()).hasValueSatisfying(holes -> assertThat(holes).hasSize(2));
    }

    @Test
    void a_range() {
      assertThat(accepted(file -> file.putObject("depthMm").put("min", 1).put("max", 3)).depthMm())
          .isEqualTo(new Quantity(1, 3));
    }

    @ParameterizedTest
    @CsvSource({"oak, OAK", "red-beech, RED_BEECH", "grade-iiib, GRADE_IIIB"})
    void words_in_small_letters_with_hyphens(String word, Cabinet.Wood wood) {
      assertThat(accepted(file -> file.put("wood", word)).wood()).isEqualTo(wood);
    }

    @Test
    void a_whole_number_however_it_is_written() {
      assertThat(accepted(file -> file.put("shelves", 3.0)).shelves()).isEqualTo(3);
    }

    @Test
    void absent_lists_as_empty_and_absent_optionals_as_unknown() {
      Cabinet cabinet =
          accepted(file -> file.remove(List.of("tools", "notes", "holesMm", "remark", "inner")));
      assertThat(cabinet.tools()).isEmpty();
      assertThat(cabinet.holesMm()).isEmpty();
      assertThat(cabinet.remark()).isEmpty();
    }

    @Test
    void null_as_unknown_and_an_empty_list_as_none() {
      Cabinet cabinet =
          accepted(
              file -> {
                file.putNull("remark").putNull("gapMm").putNull("spare");
                file.putArray("holesMm");
              });
      assertThat(cabinet.remark()).isEmpty();
      assertThat(cabinet.gapMm()).isEmpty();
      assertThat(cabinet.spare()).isEmpty();
      assertThat(cabinet.holesMm()).contains(List.of());
    }

    @Test
    void null_for_an_optional_list_as_unknown() {
      assertThat(accepted(file -> file.putNull("holesMm")).holesMm()).isEmpty();
    }

    @Test
    void a_record_within_itself() {
      Cabinet cabinet = accepted(file -> file.set("inner", SoundFile.of(Cabinet.class)));
      assertThat(cabinet.inner().orElseThrow().label()).isEqualTo("Some words");
    }

    @Test
    void a_file_that_names_its_schema() {
      assertThat(accepted(file -> file.put("$schema", "case.schema.json"))).isNotNull();
      assertThat(accepted(file -> file.putArray("$schema"))).isNotNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "  x", "x\n\ty\r\n", "\u00e4", "\ud83d\ude00"})
    void free_text(String text) {
      assertThat(accepted(file -> file.put("label", text)).label()).isEqualTo(text);
    }

    @Test
    void free_text_of_2000_characters_whatever_they_take_in_memory() {
      assertThat(accepted(file -> file.put("label", "\ud83d\ude00".repeat(2000)))).isNotNull();
    }
  }

  @Test
  void says_what_a_field_means() {
    assertThat(refused("depthMm", "700").allowed())
        .endsWith("(the field means: Depth inside, in mm)");
  }

  @Test
  void collects_every_problem_in_the_order_of_the_file() {
    String file =
        """
        {
          "label": "",
          "serial": 1e999,
          "tools": [
            {"kind": "saw", "teeth": 1, "teeth": 2},
            {"kind": "spoon"},
            {"kind": "hammer", "headKg": "1 kg", "colour": 1}
          ],
          "hinge": {"pins": 0, "leaves": 10},
          "label": "again",
          "inner": {"wood": "oak", "wood": "elm"}
        }
        """;
    List<Problem> problems = read(file).problems();
    assertThat(problems)
        .filteredOn(problem -> !problem.found().equals("nothing"))
        .extracting(problem -> Map.entry(problem.pointer(), problem.place().orElseThrow().line()))
        .containsExactly(
            Map.entry("/label", 2),
            Map.entry("/serial", 3),
            Map.entry("/tools/0/teeth", 5),
            Map.entry("/tools/0/teeth", 5),
            Map.entry("/tools/1/kind", 6),
            Map.entry("/tools/2/headKg", 7),
            Map.entry("/tools/2/colour", 7),
            Map.entry("/hinge/pins", 9),
            Map.entry("/hinge/leaves", 9),
            Map.entry("/label", 10),
            Map.entry("/inner/wood", 11));
    assertThat(problems).extracting(Problem::pointer).contains("/code", "/facing", "/inner/label");
  }

  @Test
  void a_record_that_no_file_can_hold_is_a_mistake_in_the_program() {
    record Strange(Map<String, String> anything) {}
    assertThatThrownBy(() -> new RecordReader<>(Strange.class))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("Map");
  }
}
