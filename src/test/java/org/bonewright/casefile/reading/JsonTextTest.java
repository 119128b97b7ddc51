package org.bonewright.casefile.reading;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTextTest {

  private final Problems problems = new Problems();

  private Optional<Part> parse(byte[] bytes) {
    return Utf8.decode(bytes, problems).flatMap(text -> JsonText.parse(text, problems));
  }

  private Optional<Part> parse(String text) {
    return parse(text.getBytes(UTF_8));
  }

  private Problem onlyProblemOf(String text) {
    assertThat(parse(text)).isEmpty();
    assertThat(problems.inOrder()).hasSize(1);
    return problems.inOrder().get(0);
  }

  @Test
  void every_part_knows_its_place() {
    Part.Group root =
        (Part.Group) parse("{\n  \"a\": [1.50, null],\n  \"b\": true\n}").orElseThrow();
    Part.Row row = (Part.Row) root.fields().get("a");
    assertThat(row.place()).isEqualTo(new Place(2, 8));
    assertThat(row.elements())
        .containsExactly(
            new Part.Figure(new Place(2, 9), 1.5, "1.50"), new Part.Nothing(new Place(2, 15)));
    assertThat(root.fields().get("b")).isEqualTo(new Part.Flag(new Place(3, 8), true));
  }

  @Test
  void a_byte_order_mark_is_no_part_of_the_text() {
    assertThat(parse("\uFEFF{\"a\": \"\u00e4\u20ac\"}")).isPresent();
    assertThat(problems.inOrder()).isEmpty();
  }

  @Test
  void nesting_may_be_64_deep() {
    assertThat(parse("[".repeat(64) + "]".repeat(64))).isPresent();
  }

  @Nested
  class names_given_twice {

    @Test
    void are_all_reported_and_the_first_value_is_kept() {
      Part.Group root =
          (Part.Group)
              parse("{\"a\": 1, \"b\": {\"c\": 1, \"c\": 2}, \"a\": 3, \"a\": 4}").orElseThrow();
      assertThat(root.fields().get("a")).isEqualTo(new Part.Figure(new Place(1, 7), 1, "1"));
      assertThat(problems.inOrder())
          .extracting(Problem::pointer)
          .containsExactly("/b/c", "/a", "/a");
    }

    @Test
    void are_reported_even_when_the_text_breaks_off() {
      assertThat(parse("{\"a\": 1, \"a\": 2, ")).isEmpty();
      assertThat(problems.inOrder())
          .extracting(Problem::found)
          .containsExactly(
              "the field \"a\" once more", "the end of the file while still open: { of line 1");
    }

    @Test
    void count_as_such_when_only_their_escapes_differ() {
      parse("{\"a\": 1, \"\\u0061\": 2}");
      assertThat(problems.inOrder()).extracting(Problem::pointer).containsExactly("/a");
    }
  }

  @Nested
  class refuses_what_is_not_strict_json {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '$',
        value = {
          "{\"a\": 1,} | 9 | a comma after the last entry",
          "[1, ] | 5 | a comma after the last entry",
          "{'a': 1} | 2 | the quotation mark '",
          "[\u201ca\u201d] | 2 | the quotation mark \u201c",
          "[NaN] | 2 | NaN or Infinity",
          "[-Infinity] | 2 | NaN or Infinity",
          "// hello | 1 | a comment",
          "[1 /* one */] | 4 | a comment",
          "{\"a\": 1 # one | 9 | a comment",
          "[01] | 3 | a number with a leading zero",
          "[+1] | 3 | a number with a plus sign",
          "[1.] | 3 | an unfinished number",
          "[\"\\x\"] | 4 | an unknown escape",
          "[\"\\u12\"] | 7 | an unfinished escape",
          "[yes] | 2 | the word \"yes\"",
          "{a: 1} | 2 | the character \"a\"",
          "{\"a\" 1} | 6 | the character \"1\"",
          "{\"a\": 1 \"b\": 2} | 9 | a quotation mark",
          "{\"a\": 1] | 8 | a closing bracket of the wrong kind",
          "] | 1 | a closing bracket too many",
          "{} {} | 4 | more text after the end",
          "{}} | 3 | more text after the end"
        })
    void with_column_and_plain_words(String text, int column, String found) {
      Problem problem = onlyProblemOf(text);
      assertThat(problem.found()).isEqualTo(found);
      assertThat(problem.place()).contains(new Place(1, column));
    }

    @Test
    void with_its_line() {
      assertThat(onlyProblemOf("{\n\n  \"a\": oops\n}").place()).contains(new Place(3, 8));
    }

    @Test
    void with_a_pointer_to_the_innermost_group() {
      assertThat(onlyProblemOf("{\"a\": [1, {\"b\": oops}]}").pointer()).isEqualTo("/a/1");
    }

    @Test
    void such_as_a_line_break_within_a_text() {
      assertThat(onlyProblemOf("[\"a\nb\"]").found())
          .isEqualTo("a line break or control character inside a text");
    }
  }

  @Nested
  class names_what_is_open_when_the_text_breaks_off {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "",
          ",",
          ", \"b",
          ", \"b\"",
          ", \"b\":",
          ", \"b\": \"c",
          ", \"b\": tr",
          ", \"b\": [1], "
        })
    void wherever_that_is(String rest) {
      assertThat(onlyProblemOf("{\n\"x\": [\n{\"a\": 1" + rest).found())
          .isEqualTo("the end of the file while still open: { of line 3, [ of line 2, { of line 1");
    }

    @Test
    void and_gives_line_and_column() {
      assertThat(onlyProblemOf("{\n  \"a\": [1,\n").place()).contains(new Place(2, 11));
    }
  }

  @Nested
  class keeps_to_its_limits {

    @Test
    void of_size() {
      assertThat(parse(new byte[5_000_000])).isEmpty();
      assertThat(problems.inOrder())
          .containsExactly(Problem.error("", "a file of 4.8 MB", "at most 4.0 MB"));
    }

    @Test
    void of_nesting() {
      assertThat(onlyProblemOf("[".repeat(65)).found())
          .isEqualTo("groups and lists nested more than 64 deep");
    }

    @Test
    void with_one_short_answer_to_millions_of_brackets() {
      assertTimeout(
          Duration.ofSeconds(5),
          () -> assertThat(onlyProblemOf("[".repeat(4_000_000)).inWords()).hasSizeLessThan(200));
    }

    @Test
    void of_numbers_and_reads_on() {
      assertThat(parse("{\"a\": 1e999, \"b\": [-1e999, " + "9".repeat(5000) + "], \"c\": 1e-999}"))
          .isPresent();
      assertThat(problems.inOrder())
          .extracting(Problem::pointer, Problem::found)
          .containsExactly(
              tuple("/a", "the number 1e999"),
              tuple("/b/0", "the number -1e999"),
              tuple("/b/1", "a number written with 5000 characters"));
    }

    @Test
    void of_names() {
      assertThat(parse("{\"x\": {\"" + "n".repeat(300) + "\": 1}}")).isPresent();
      assertThat(problems.inOrder())
          .extracting(Problem::pointer, Problem::found)
          .containsExactly(tuple("/x", "a field's name of 300 characters"));
    }
  }

  @Nested
  class refuses_what_is_not_utf_8 {

    @Test
    void with_the_byte_and_its_place() {
      assertThat(parse("{\n\"a\": \"\u00fc\"}".getBytes(ISO_8859_1))).isEmpty();
      Problem problem = problems.inOrder().get(0);
      assertThat(problem.found()).isEqualTo("the byte 0xFC, which is no UTF-8 text");
      assertThat(problem.place()).contains(new Place(2, 7));
    }

    @Test
    void with_a_word_about_utf_16() {
      assertThat(parse("{}".getBytes(UTF_16))).isEmpty();
      assertThat(problems.inOrder()).extracting(Problem::found).containsExactly("a text in UTF-16");
    }

    @Test
    void also_when_the_text_is_cut_within_a_character() {
      assertThat(parse(new byte[] {'[', '"', (byte) 0xE2, (byte) 0x82})).isEmpty();
      assertThat(problems.inOrder()).hasSize(1);
    }

    @Test
    void also_when_an_escape_gives_half_a_character() {
      parse("{\"a\": \"\\ud83d\", \"b\": \"\\ud83d\\ude00\"}");
      assertThat(problems.inOrder()).extracting(Problem::pointer).containsExactly("/a");
    }
  }

  @Test
  void says_that_a_file_is_empty() {
    for (String text : List.of("", " \r\n\t", "\uFEFF", "\uFEFF\n")) {
      Problems noted = new Problems();
      assertThat(Utf8.decode(text.getBytes(UTF_8), noted)).isEmpty();
      assertThat(noted.inOrder()).extracting(Problem::found).containsExactly("an empty file");
    }
  }
}
