package org.bonewright.casefile.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bonewright.casefile.reading.Cabinets.read;
import static org.bonewright.casefile.reading.Cabinets.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordReaderRefusalTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '$',
      value = {
        "label | 7 | the number 7 | a text that is not blank",
        "label | \"\" | an empty text | a text that is not blank",
        "label | \" \\u00a0\\u2003\" | the text \" \u00a0\u2003\" | a text that is not blank",
        "label | \"a\\u001b[31m\" | the text \"a\\u001b[31m\" | none of them for control",
        "label | null | null | a text",
        "code | \"Abc\" | the text \"Abc\" | small letters, then perhaps a number",
        "code | \"abc\\n\" | the text \"abc\\u000a\" | small letters, then perhaps a number",
        "locked | \"true\" | the text \"true\" | true or false",
        "locked | 1 | the number 1 | true or false",
        "shelves | 3.5 | the number 3.5 | a whole number from 1 to 12",
        "shelves | 0 | the number 0 | a whole number from 1 to 12",
        "shelves | 13 | the number 13 | a whole number from 1 to 12",
        "shelves | true | true | a whole number from 1 to 12",
        "serial | 2147483648 | the number 2147483648 | from -2147483648 to 2147483647",
        "weightKg | 0.49 | the number 0.49 | a number from 0.5 to 200",
        "weightKg | [1] | a list | a number from 0.5 to 200",
        "tilt | {} | a group of fields in braces | a number",
        "wood | \"pine\" | the text \"pine\" | one of oak, red-beech, grade-iiib",
        "depthMm | -1 | the number -1 | a number from 0 to 600",
        "depthMm | [] | an empty list | or a range such as",
        "facing | 360 | the number 360 | degrees from 0 to below 360",
        "facing | -1 | the number -1 | degrees from 0 to below 360",
        "facing | \"upwards\" | the text \"upwards\" | one of anterior",
        "facing | {} | a group of fields in braces | degrees from 0 to below 360",
        "favourite | 3 | the number 3 | a group whose field kind is one of saw, hammer",
        "hinge | [] | an empty list | a group with the fields pins, leaves",
        "tools | {} | a group of fields in braces | a list",
        "holesMm | 4 | the number 4 | a list",
        "oiled | 0 | the number 0 | true or false"
      })
  void refuses_a_value_of_the_wrong_kind(String field, String value, String found, String allowed) {
    Problem problem = refused(field, value);
    assertThat(problem.pointer()).isEqualTo("/" + field);
    assertThat(problem.found()).isEqualTo(found);
    assertThat(problem.allowed()).contains(allowed);
  }

  @Test
  void refuses_a_missing_field_at_the_place_where_it_would_stand() {
    RecordReader.Outcome<Cabinet> outcome =
        read(file -> file.remove(List.of("locked", "hinge", "facing")));
    assertThat(outcome.problems())
        .extracting(Problem::pointer)
        .containsExactly("/locked", "/facing", "/hinge");
    assertThat(outcome.problems()).extracting(Problem::found).containsOnly("nothing");
  }

  @Test
  void refuses_an_unknown_field_and_names_the_nearest_one_that_is_still_free() {
    assertThat(refused("Remarks", "1").hint()).isEmpty();
    RecordReader.Outcome<Cabinet> outcome =
        read(file -> file.set("re_mark", file.remove("remark")));
    assertThat(outcome.problems())
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.pointer()).isEqualTo("/re_mark");
              assertThat(problem.found()).isEqualTo("the unknown field \"re_mark\"");
              assertThat(problem.hint()).contains("Did you mean \"remark\"?");
            });
  }

  @Test
  void refuses_an_unknown_word_and_names_the_nearest() {
    assertThat(refused("wood", "\"Red_Beach\"").hint()).contains("Did you mean \"red-beech\"?");
    assertThat(refused("facing", "\"antero-lateral\"").hint())
        .contains("Did you mean \"anterolateral\"?");
  }

  @Test
  void refuses_a_number_with_its_unit() {
    Problem problem = refused("depthMm", "\"12 mm\"");
    assertThat(problem.found()).isEqualTo("the text \"12 mm\"");
    assertThat(problem.hint())
        .contains("The unit is fixed by the field's name; write the bare number.");
  }

  @Test
  void refuses_a_number_in_quotation_marks() {
    assertThat(refused("depthMm", "\"12.5\"").hint())
        .contains("Write 12.5 without quotation marks.");
  }

  @Test
  void refuses_null_where_a_list_or_a_value_is_needed() {
    assertThat(refused("tools", "null").hint())
        .contains("Leave the field out when there is nothing to list.");
    assertThat(refused("shelves", "null").hint())
        .contains("This field must have a value; null is only for fields that may be left out.");
    assertThat(refused("keys", "[1, null]").pointer()).isEqualTo("/keys/1");
  }

  @Test
  void refuses_a_range_that_is_not_one() {
    assertThat(refused("depthMm", "{\"min\": 5, \"max\": 3}").found())
        .isEqualTo("a min above the max");
    assertThat(refused("depthMm", "{\"min\": 5}").pointer()).isEqualTo("/depthMm/max");
    assertThat(refused("depthMm", "{\"min\": 5, \"max\": 601}").pointer())
        .isEqualTo("/depthMm/max");
    assertThat(refused("depthMm", "{\"min\": 5, \"max\": 6, \"mean\": 5}").pointer())
        .isEqualTo("/depthMm/mean");
  }

  @Test
  void refuses_an_unknown_missing_or_wrong_kind() {
    assertThat(refused("favourite", "{\"kind\": \"hamer\"}").hint())
        .contains("Did you mean \"hammer\"?");
    assertThat(refused("favourite", "{}").pointer()).isEqualTo("/favourite/kind");
    assertThat(refused("favourite", "{\"kind\": 3}").pointer()).isEqualTo("/favourite/kind");
  }

  @Test
  void refuses_a_field_of_another_alternative() {
    assertThat(refused("favourite", "{\"kind\": \"saw\", \"headKg\": 1}").pointer())
        .isEqualTo("/favourite/headKg");
  }

  @Test
  void refuses_fields_that_the_record_finds_at_odds() {
    Problem problem = refused("hinge", "{\"pins\": 3, \"leaves\": 2}");
    assertThat(problem.pointer()).isEqualTo("/hinge");
    assertThat(problem.found()).isEqualTo("fields that do not go together: more pins than leaves");
  }

  @Test
  void refuses_too_long_lists_and_texts() {
    assertThat(refused("keys", "[" + "1,".repeat(500) + "1]").found()).isEqualTo("a list of 501");
    assertThat(refused("label", "\"" + "a".repeat(2001) + "\"").found())
        .isEqualTo("a text of 2001 characters");
  }

  @Test
  void refuses_a_file_that_is_not_a_group() {
    assertThat(read("[]").problems())
        .singleElement()
        .satisfies(problem -> assertThat(problem.pointer()).isEmpty());
  }
}
