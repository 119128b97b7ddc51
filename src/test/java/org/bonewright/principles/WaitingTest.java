package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bonewright.report.CatalogueJson;
import org.bonewright.report.CatalogueText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Principles that are not judged yet are listed, so that silence is not taken for a verdict. */
class WaitingTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final Map<String, Family> FAMILIES =
      Map.of(
          "nail", new Family("nail", "K", "Nail", 2), "host", new Family("host", "C", "Host", 1));

  @Test
  void what_needs_the_forces_waits_for_them() {
    assertThat(RULES.waiting())
        .extracting(Waiting::id)
        .containsExactly("bridge-not-too-stiff", "strain-in-band", "fatigue-race-won");
  }

  @Test
  void none_that_waits_has_a_card() {
    assertThat(RULES.waiting()).noneMatch(waiting -> RULES.card(waiting.id()).isPresent());
  }

  @Test
  void the_list_of_principles_names_each_under_those_that_are_judged() {
    String list = new CatalogueText(RULES).principles();
    List<String> below = list.substring(list.indexOf("Not judged yet:")).lines().toList();
    for (Waiting waiting : RULES.waiting()) {
      assertThat(list.lines().filter(line -> line.contains(waiting.id()))).hasSize(1);
      assertThat(below).anyMatch(line -> line.contains(waiting.id()));
      assertThat(below).anyMatch(line -> line.contains("waits for " + waiting.waitsFor()));
    }
  }

  @Test
  void the_list_as_json_keeps_them_apart() {
    JsonNode list = new JsonMapper().readTree(new CatalogueJson(RULES).principles());
    assertThat(list.path("principles")).hasSameSizeAs(RULES.cards());
    assertThat(list.path("waiting")).hasSameSizeAs(RULES.waiting());
    assertThat(list.path("waiting").path(0).path("family").asString()).isEqualTo("D");
    assertThat(list.path("waiting").path(0).path("waitsFor").asString()).isNotBlank();
  }

  @Test
  void they_stand_in_the_order_of_families_and_ids() {
    String yaml =
        "{waiting: [{id: b, family: nail, title: t, waitsFor: x},"
            + " {id: c, family: host, title: t, waitsFor: x},"
            + " {id: a, family: nail, title: t, waitsFor: x}]}";
    assertThat(Waiting.read(yaml, FAMILIES, Set.of()))
        .extracting(Waiting::id)
        .containsExactly("c", "a", "b");
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {waiting: [{id: judged, family: nail, title: t, waitsFor: x}]}           | is judged
          {waiting: [{id: a, family: tail, title: t, waitsFor: x}]}                | no family tail
          {waiting: [{id: a, family: nail, title: t}]}                             | waitsFor is missing
          {waiting: [{id: a, family: nail, title: t, waitsFor: x, since: 1}]}      | unknown [since]
          """)
  void refuses_what_makes_no_sense(String yaml, String message) {
    assertThatThrownBy(() -> Waiting.read(yaml, FAMILIES, Set.of("judged")))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(message);
  }

  @Test
  void refuses_to_wait_twice() {
    String yaml =
        "{waiting: [{id: a, family: nail, title: t, waitsFor: x},"
            + " {id: a, family: host, title: t, waitsFor: x}]}";
    assertThatThrownBy(() -> Waiting.read(yaml, FAMILIES, Set.of()))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("waits twice");
  }
}
