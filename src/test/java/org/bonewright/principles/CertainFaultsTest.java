package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Which of several limits that are not kept is named, and in which order. */
class CertainFaultsTest {

  private static final Card CARD =
      TestCards.card(
          "small",
          Map.of("a", "ratio", "b", "ratio"),
          Map.of(
              "aLow", TestCards.limit("a", 1),
              "aLower", TestCards.limit("a", 2),
              "bLow", TestCards.limit("b", 1)));

  private static Map<String, Severity> certain(Map<String, Severity> always) {
    return certain(List.of(always));
  }

  private static Map<String, Severity> certain(List<Map<String, Severity>> ways) {
    return new CertainFaults(CARD, ways).byLimit();
  }

  @Nested
  class A_limit {

    @Test
    void is_certain_only_where_it_is_kept_in_no_way() {
      assertThat(
              certain(
                  List.of(
                      Map.of("aLow", Severity.MINOR, "bLow", Severity.MAJOR),
                      Map.of("bLow", Severity.MAJOR))))
          .isEqualTo(Map.of("bLow", Severity.MAJOR));
    }

    @Test
    void counts_at_its_worst_grade_whichever_way_that_is() {
      Map<String, Severity> minor = Map.of("aLow", Severity.MINOR);
      Map<String, Severity> major = Map.of("aLow", Severity.MAJOR);
      assertThat(certain(List.of(minor, major))).isEqualTo(major);
      assertThat(certain(List.of(major, minor))).isEqualTo(major);
    }

    @Test
    void stands_for_a_milder_one_of_the_same_number() {
      assertThat(certain(Map.of("aLow", Severity.CRITICAL, "aLower", Severity.MINOR)))
          .containsOnlyKeys("aLow");
      assertThat(certain(Map.of("aLow", Severity.MINOR, "aLower", Severity.CRITICAL)))
          .containsOnlyKeys("aLower");
    }

    @Test
    void that_is_a_condition_of_its_own_stands_for_no_other() {
      assertThat(
              certain(
                  Map.of(
                      "aLow", Severity.MINOR, "words", Severity.MINOR, "others", Severity.MINOR)))
          .containsOnlyKeys("aLow", "words", "others");
    }
  }

  @Test
  void the_gravest_comes_first() {
    assertThat(certain(Map.of("aLow", Severity.MINOR, "bLow", Severity.CRITICAL)).keySet())
        .containsExactly("bLow", "aLow");
    assertThat(certain(Map.of("aLow", Severity.CRITICAL, "bLow", Severity.MINOR)).keySet())
        .containsExactly("aLow", "bLow");
  }

  @Test
  void of_equally_grave_ones_what_nobody_disputes_comes_first() {
    Card disputed = AllCells.RULES.card("locking-screws-per-side").orElseThrow();
    Map<String, Severity> same =
        new CertainFaults(
                disputed, List.of(Map.of("twoShort", Severity.MAJOR, "any", Severity.MAJOR)))
            .byLimit();
    assertThat(disputed.disputed().orElseThrow().limits()).contains("twoShort");
    assertThat(same.keySet()).containsExactly("any", "twoShort");
  }
}
