package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Examples.Line;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ExamplesReaderTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final Card CARD = RULES.card("residual-gap-closed").orElseThrow();

  @Test
  void a_need_that_is_not_named_is_unknown() {
    Line line = only("table: [{say: a, given: {gap: 3}, expect: met}]");
    assertThat(line.number("gap")).isEqualTo(3);
    assertThat(line.readings().get("plate").shown()).isEqualTo("not known");
  }

  @Test
  void a_line_overrides_what_is_usual() {
    Line line = only("usually: {plate: yes}\ntable: [{say: a, given: {plate: no}, expect: met}]");
    assertThat(line.word("plate")).isEqualTo("no");
  }

  @Test
  void a_scale_gives_a_line_for_each_number() {
    Examples examples = read("scales: [{say: a, along: gap, expect: {1: met, 1.5: unmet}}]");
    assertThat(examples.lines()).extracting(Line::say).containsExactly("a, gap 1", "a, gap 1.5");
    assertThat(examples.lines()).extracting(line -> line.number("gap")).containsExactly(1.0, 1.5);
  }

  @Test
  void ranges_and_several_words_are_not_known_exactly() {
    Line line =
        only("table: [{say: a, given: {gap: [1, 2], line: [bridged, neutralised]}, expect: met}]");
    assertThat(line.number("gap")).isNaN();
    assertThat(line.word("line")).isEmpty();
    assertThat(line.readings().get("line").shown()).isEqualTo("bridged or neutralised");
  }

  @Test
  void what_a_model_samples_is_written_as_samples_or_as_percentages_at_numbers() {
    assertThat(sampled("{samples: [1, 3.5, 1]}").samples()).containsExactly(1.0, 3.5, 1.0);
    assertThat(sampled("{share: {0.5: 89, 2: 11}}").samples())
        .hasSize(100)
        .startsWith(0.5)
        .endsWith(2.0)
        .filteredOn(value -> value == 2)
        .hasSize(11);
  }

  private static Reading.Sampled sampled(String given) {
    Line line = only("table: [{say: a, given: {gap: " + given + "}, expect: met}]");
    assertThat(line.number("gap")).isNaN();
    return (Reading.Sampled) line.readings().get("gap");
  }

  @Nested
  class Refuses {

    @Test
    void samples_that_make_no_whole_or_that_the_measure_cannot_read() {
      refuses(gap("{share: {1: 90, 2: 9}}"), "gap: the shares make 99 %");
      refuses(gap("{share: {1: 89.5, 2: 10.5}}"), "gap: no whole percentage: 89.5");
      refuses(gap("{samples: [1, -1]}"), "gap can never be -1.0");
      refuses(gap("{samples: [1, wide]}"), "gap: no number: wide");
      refuses(gap("{sampels: [1]}"), "gap: samples or share, not [sampels]");
    }

    private static String gap(String given) {
      return "table: [{say: a, given: {gap: " + given + "}, expect: met}]";
    }

    @Test
    void an_unknown_need() {
      refuses("table: [{say: a, given: {gapp: 1}, expect: met}]", "no need gapp");
      refuses("cases: [{say: a, base: b, on: op-1, read: {gapp: 1}, expect: met}]", "gapp");
    }

    @Test
    void an_unknown_field() {
      refuses("tabel: []", "unknown [tabel]");
      refuses("table: [{say: a, give: {gap: 1}, expect: met}]", "unknown [give]");
    }

    @Test
    void a_word_or_number_that_the_measure_cannot_read() {
      refuses("table: [{say: a, given: {plate: maybe}, expect: met}]", "plate can never be maybe");
      refuses("table: [{say: a, given: {gap: -1}, expect: met}]", "gap can never be -1.0");
      refuses("table: [{say: a, given: {plate: 1}, expect: met}]", "plate can never be 1.0");
    }

    @Test
    void two_lines_that_give_the_same() {
      refuses(
          """
          table:
            - {say: a, given: {gap: 1}, expect: met}
            - {say: b, given: {gap: 1.0}, expect: met}
          """,
          "\"b\" repeats another example");
    }

    @Test
    void a_line_that_stands_on_a_scale() {
      refuses(
          """
          table: [{say: a, given: {gap: 1}, expect: met}]
          scales: [{say: b, along: gap, expect: {1: met}}]
          """,
          "\"a\" repeats another example");
    }

    @Test
    void two_lines_that_say_the_same() {
      refuses(
          """
          table:
            - {say: a, given: {gap: 1}, expect: met}
            - {say: a, given: {gap: 2}, expect: met}
          """,
          "\"a\" repeats another example");
    }

    private void refuses(String yaml, String why) {
      assertThatThrownBy(() -> read(yaml)).hasMessageContaining(why);
    }
  }

  @Nested
  class Limits {

    @Test
    void are_proved_by_lines_below_on_and_above() {
      assertThat(unproved("0.9: met, 1: met, 1.1: unmet minor closed")).doesNotContain("closed");
    }

    @Test
    void are_not_proved_from_one_side() {
      assertThat(unproved("1: met, 1.1: unmet minor closed")).contains("closed");
      assertThat(unproved("0.9: met, 1: met")).contains("closed");
    }

    @Test
    void are_not_proved_without_a_line_on_them() {
      assertThat(unproved("0.9: met, 1.1: unmet minor closed")).contains("closed");
    }

    @Test
    void are_not_proved_where_nothing_turns() {
      assertThat(unproved("0.9: met, 1: met, 1.1: met")).contains("closed");
    }

    private List<String> unproved(String scale) {
      Examples examples = read("scales: [{say: a, along: gap, expect: {" + scale + "}}]");
      return new LimitSides(CARD, examples.lines()).unproved();
    }
  }

  private static Line only(String yaml) {
    return read(yaml).lines().get(0);
  }

  private static Examples read(String yaml) {
    return new ExamplesReader(CARD, RULES::definition).read(yaml);
  }
}
