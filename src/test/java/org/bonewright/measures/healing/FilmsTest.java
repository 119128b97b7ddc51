package org.bonewright.measures.healing;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmsTest {

  @Nested
  class Score {

    @Test
    void is_the_sum_of_the_last_film_scored() {
      String films =
          Found.film(50, "cortices: [1, 1, 1, 1]")
              + ","
              + Found.film(90, "cortices: [1, 2, 2, 3]")
              + ","
              + Found.film(95, "line: 'visible'");
      assertThat(Taken.of("rust-now", Found.since(films))).isEqualTo("8 fact");
      assertThat(Taken.of("rust-before", Found.planned("deformity", films))).isEqualTo("8 fact");
    }

    @Test
    void is_not_known_where_no_film_is_scored() {
      assertThat(Taken.of("rust-now", Found.since(Found.film(90, "callus: 'little'"))))
          .isEqualTo("unknown, ask findings after op-1/films/cortices");
    }

    /** Operated on day 2: weeks 10 to 14 are days 72 to 100. */
    @ParameterizedTest
    @CsvSource({"71, none: no film scored in weeks 10 to 14", "72, 6 fact", "100, 6 fact"})
    void at_12_weeks_is_that_of_weeks_10_to_14(int day, String expected) {
      assertThat(Taken.of("rust-12-weeks", Found.since(Found.film(day, "cortices: [1, 1, 2, 2]"))))
          .isEqualTo(expected);
    }

    @Test
    void after_week_14_counts_no_more() {
      assertThat(Taken.of("rust-12-weeks", Found.since(Found.film(101, "cortices: [1, 1, 2, 2]"))))
          .startsWith("none");
    }
  }

  @Nested
  class Callus {

    @Test
    void is_present_when_any_film_shows_some() {
      String little = Found.film(50, "callus: 'little'") + "," + Found.film(90, "callus: 'none'");
      assertThat(Taken.of("callus-after", Found.since(little))).isEqualTo("present fact");
      assertThat(Taken.of("callus-after", Found.since(Found.film(90, "callus: 'none'"))))
          .isEqualTo("absent fact");
      assertThat(Taken.of("callus-after", Found.since("")))
          .isEqualTo("unknown, ask findings after op-1/films/callus");
    }
  }

  @Nested
  class Line {

    @Test
    void is_as_on_the_last_film_that_tells() {
      String films =
          Found.film(50, "line: 'visible'")
              + ","
              + Found.film(90, "line: 'fading'")
              + ","
              + Found.film(95, "callus: 'none'");
      assertThat(Taken.of("line-after", Found.since(films))).isEqualTo("fading fact");
    }

    @Test
    void grows_wider_from_the_first_film_that_measures_it_to_the_last() {
      String first = Found.film(50, "lineMm: 1");
      String last = "," + Found.film(90, "lineMm: {min: 2, max: 3}");
      assertThat(Taken.of("line-widening-after", Found.since(first + last)))
          .isEqualTo("1–2 fact, ask findings after op-1/films/lineMm");
      assertThat(Taken.of("line-widening-after", Found.since(first)))
          .isEqualTo("none: no two films give the width of the line");
    }
  }

  @Nested
  class LucentScrews {

    @Test
    void are_the_most_on_any_film() {
      String films =
          Found.film(50, "lucentScrews: ['op-1/plate-1 hole 1', 'op-1/plate-1 hole 3']")
              + ","
              + Found.film(90, "lucentScrews: ['op-1/plate-1 hole 1']");
      assertThat(Taken.of("lucent-screws-after", Found.since(films))).isEqualTo("2 fact");
      assertThat(Taken.of("lucent-screws-after", Found.since("{day: 50}")))
          .isEqualTo("unknown, ask findings after op-1/films/lucentScrews");
    }
  }

  @Nested
  class BridgedCortices {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "cortices: [3, 3, 2, 1], line: 'visible' | 2 fact",
          "cortices: [3, 3, 2, 1] | 2 fact",
          "cortices: [1, 1, 1, 1], line: 'gone' | 4 fact",
          "line: 'gone' | 4 fact",
          "cortices: [3, 1, 1, 1], line: 'fading' | 1–4 fact, ask findings after op-1/films/cortices",
          "cortices: [3, 3, 3, 3], line: 'fading' | 4 fact",
          "line: 'fading' | unknown, ask findings after op-1/films/cortices",
          "callus: 'bridging' | unknown, ask findings after op-1/films/cortices"
        })
    void are_those_scored_3_or_all_where_the_line_is_gone(String film, String expected) {
      assertThat(Taken.of("bridged-cortices", Found.since(Found.film(90, film))))
          .isEqualTo(expected);
    }
  }

  @Nested
  class Progress {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "cortices: [1, 1, 2, 1] | cortices: [1, 1, 2, 1] | no fact",
          "cortices: [1, 1, 2, 1] | cortices: [1, 2, 2, 1] | yes fact",
          "cortices: [1, 2, 2, 1] | cortices: [1, 1, 2, 1] | no fact",
          "callus: 'little' | callus: 'abundant' | yes fact",
          "callus: 'abundant' | callus: 'bridging' | yes fact",
          "line: 'visible' | line: 'fading' | yes fact",
          "line: 'visible', callus: 'none' | line: 'visible', callus: 'none' | no fact"
        })
    void shows_in_anything_that_both_films_tell(String earlier, String last, String expected) {
      String films = Found.film(50, earlier) + "," + Found.film(92, last);
      assertThat(Taken.of("radiographic-progress", Found.since(films))).isEqualTo(expected);
    }

    @Test
    void takes_films_at_least_six_weeks_apart_that_tell_the_same() {
      String unknown = "unknown, ask findings after op-1/films";
      String line = "line: 'visible'";
      assertThat(
              Taken.of(
                  "radiographic-progress",
                  Found.since(Found.film(50, line) + "," + Found.film(91, line))))
          .isEqualTo(unknown);
      assertThat(
              Taken.of(
                  "radiographic-progress",
                  Found.since(Found.film(50, line) + "," + Found.film(92, "callus: 'none'"))))
          .isEqualTo(unknown);
    }
  }

  @Nested
  class WithoutAnOperation {

    private static final String BRACE = "{kind: 'brace', fromDay: 0, toDay: 120}";

    private static CaseText braced(String treatments, String films) {
      return CaseText.bare()
          .with(
              "{operations: [], nonOperative: ["
                  + treatments
                  + "], findings: ["
                  + films
                  + "], plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}]}");
    }

    /** Weeks 5 to 7 are days 35 to 49. */
    @ParameterizedTest
    @CsvSource({"34, none", "35, 7 fact", "49, 7 fact", "50, none"})
    void a_film_of_weeks_5_to_7_counts_for_6(int day, String expected) {
      assertThat(
              Taken.of("rushu-6-weeks", braced(BRACE, Found.film(day, "cortices: [1, 2, 2, 2]"))))
          .startsWith(expected);
    }

    @Test
    void a_film_after_an_operation_does_not_count() {
      String film = Found.film(42, "cortices: [1, 2, 2, 2]");
      assertThat(Taken.of("rushu-6-weeks", Found.since(film))).startsWith("none");
    }

    @Test
    void a_brace_on_file_before_any_operation_tells_so() {
      assertThat(Taken.of("treated-without-operation", braced(BRACE, ""))).isEqualTo("yes record");
      assertThat(Taken.of("treated-without-operation", braced("", ""))).isEqualTo("no record");
      CaseText after =
          Found.since("").with("{nonOperative: [{kind: 'brace', fromDay: 5, toDay: 60}]}");
      assertThat(Taken.of("treated-without-operation", after)).isEqualTo("no record");
    }

    @Test
    void another_treatment_within_eight_weeks_of_the_film_is_a_change() {
      String film = Found.film(42, "cortices: [1, 2, 2, 2]");
      assertThat(Taken.of("treatment-changed", braced(BRACE, film))).isEqualTo("no record");
      // 42 + 56 = 98
      String soon = BRACE + ", {kind: 'ultrasound', fromDay: 98}";
      String late = BRACE + ", {kind: 'ultrasound', fromDay: 99}";
      assertThat(Taken.of("treatment-changed", braced(soon, film))).isEqualTo("yes record");
      assertThat(Taken.of("treatment-changed", braced(late, film))).isEqualTo("no record");
      assertThat(Taken.of("treatment-changed", braced(BRACE, ""))).startsWith("none");
      CaseText operated =
          braced(BRACE, film).with("{operations: [{id: 'op-1', day: 80}], plans: []}");
      assertThat(Taken.of("treatment-changed", operated)).isEqualTo("yes record");
    }
  }

  @Nested
  class Ct {

    private static String ct(String shown) {
      return Taken.of(
          "ct-without-bridge", Found.since("{day: 300, films: [{view: 'ct'" + shown + "}]}"));
    }

    @Test
    void settles_it_where_it_shows_the_line_and_no_bridge() {
      assertThat(ct(", line: 'visible', cortices: [1, 1, 2, 1]")).isEqualTo("yes fact");
      assertThat(ct(", line: 'visible', callus: 'little'")).isEqualTo("yes fact");
    }

    @Test
    void settles_nothing_where_a_cortex_is_bridged_or_the_line_goes() {
      assertThat(ct(", line: 'visible', cortices: [1, 1, 3, 1]")).isEqualTo("no fact");
      assertThat(ct(", line: 'visible', callus: 'bridging'")).isEqualTo("no fact");
      assertThat(ct(", line: 'fading', callus: 'little'")).isEqualTo("no fact");
    }

    @Test
    void leaves_it_open_where_its_result_is_not_told() {
      assertThat(ct("")).isEqualTo("no or yes fact, ask findings after op-1/films");
      assertThat(ct(", line: 'visible'")).startsWith("no or yes");
    }

    @Test
    void that_was_not_made_is_none() {
      assertThat(Taken.of("ct-without-bridge", Found.since(Found.film(300, "line: 'visible'"))))
          .isEqualTo("no fact");
    }
  }
}
