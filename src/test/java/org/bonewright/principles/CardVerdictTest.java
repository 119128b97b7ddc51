package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Card.Limit;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * On a small principle, judged here by hand: with a plate, the ratio is at least 8 in the femur and
 * 6 in the tibia; below 3 is critical, else minor.
 */
class CardVerdictTest {

  private static final Map<String, Definition.Domain> DOMAINS =
      Map.of(
          "bone", Definition.words("femur", "tibia"),
          "plate", Definition.yesOrNo(),
          "ratio", Definition.ratio());
  private static final Card CARD =
      TestCards.card(
          "small",
          Map.of("bone", "bone", "plate", "plate", "ratio", "ratio"),
          Map.of(
              "least",
              new Limit("ratio", List.of("bone"), Map.of("femur", 8.0, "tibia", 6.0), ""),
              "short",
              TestCards.limit("ratio", 3)));
  private static final Worlds WORLDS =
      new Worlds(CARD, id -> new Definition(id, id, DOMAINS.get(id), "", List.of(), ""));

  private static final MissingFact BONE = new MissingFact("bone", "Which bone?");
  private static final MissingFact PLATE = new MissingFact("plate", "Is there a plate?");
  private static final MissingFact LENGTH = new MissingFact("length", "How long is the plate?");

  private static Verdict verdict(Reading bone, Reading plate, Reading ratio) {
    Map<String, Reading> readings =
        new TreeMap<>(Map.of("bone", bone, "plate", plate, "ratio", ratio));
    List<World> worlds = WORLDS.of(readings);
    Verdicts said = new Verdicts();
    for (World world : worlds) {
      if (world.choice("plate").equals("yes")) {
        said.applies(world);
      }
      Double value = world.value("ratio");
      if (value != null && value < world.limit("least")) {
        said.unmet(world, "minor", "least");
      }
      if (value != null && value < world.limit("short")) {
        said.unmet(world, "critical", "short");
      }
    }
    return new CardVerdict(WORLDS, worlds, said, readings).verdict();
  }

  private static Reading word(String word) {
    return Reading.word(word, "");
  }

  private static Reading number(double value) {
    return Reading.number(value, "");
  }

  private static Reading range(double min, double max) {
    return new Reading.Amount(min, max, Kind.FACT, "", List.of(LENGTH));
  }

  private static Reading unknown(MissingFact fact) {
    return Reading.unknown(fact);
  }

  private static Verdict.Unknown unknown(Verdict verdict) {
    assertThat(verdict).isInstanceOf(Verdict.Unknown.class);
    return (Verdict.Unknown) verdict;
  }

  @Nested
  class IsCertain {

    @Test
    void when_everything_is_known() {
      assertThat(verdict(word("femur"), word("yes"), number(8)).kind()).isEqualTo(VerdictKind.MET);
      assertThat(verdict(word("femur"), word("yes"), number(7.9)))
          .isEqualTo(new Verdict.Unmet(Severity.MINOR, Severity.MINOR, "least", List.of("least")));
      assertThat(verdict(word("femur"), word("no"), number(1)).kind())
          .isEqualTo(VerdictKind.NOT_APPLICABLE);
    }

    @Test
    void when_a_range_lies_on_one_side_of_the_limit() {
      assertThat(verdict(word("femur"), word("yes"), range(8, 20)).kind())
          .isEqualTo(VerdictKind.MET);
      assertThat(verdict(word("tibia"), word("yes"), range(4, 5)).kind())
          .isEqualTo(VerdictKind.UNMET);
    }

    @Test
    void from_mildest_to_worst_when_only_the_grade_is_open() {
      assertThat(verdict(word("tibia"), word("yes"), range(2, 5)))
          .isInstanceOfSatisfying(
              Verdict.Unmet.class,
              unmet -> {
                assertThat(unmet.mildest()).isEqualTo(Severity.MINOR);
                assertThat(unmet.severity()).isEqualTo(Severity.CRITICAL);
                assertThat(unmet.limit()).isEqualTo("short");
                assertThat(unmet.certain()).containsExactly("least");
              });
    }

    @Test
    void when_what_is_not_known_does_not_matter() {
      assertThat(verdict(unknown(BONE), word("yes"), number(9)).kind()).isEqualTo(VerdictKind.MET);
      assertThat(verdict(unknown(BONE), word("no"), unknown(LENGTH)).kind())
          .isEqualTo(VerdictKind.NOT_APPLICABLE);
    }

    @Test
    void when_there_is_nothing_to_measure() {
      assertThat(verdict(word("femur"), word("no"), new Reading.None("no plate")).kind())
          .isEqualTo(VerdictKind.NOT_APPLICABLE);
    }
  }

  @Nested
  class IsUnknown {

    @Test
    void with_what_is_still_possible_and_how_bad_it_may_be() {
      Verdict.Unknown open = unknown(verdict(word("femur"), unknown(PLATE), range(2, 9)));
      assertThat(open.possible())
          .isEqualTo(Set.of(VerdictKind.MET, VerdictKind.UNMET, VerdictKind.NOT_APPLICABLE));
      assertThat(open.worst()).isEqualTo(Severity.CRITICAL);
    }

    @Test
    void and_asks_for_everything_that_matters_and_nothing_else() {
      assertThat(unknown(verdict(unknown(BONE), unknown(PLATE), number(1))).asks())
          .containsExactly(PLATE);
      assertThat(unknown(verdict(word("femur"), unknown(PLATE), range(7, 9))).asks())
          .containsExactly(PLATE, LENGTH);
    }

    /** The limit hangs on the bone, so that one ratio lies in another cell in either bone. */
    @Test
    void and_asks_for_a_word_that_only_moves_a_limit() {
      Verdict.Unknown open = unknown(verdict(unknown(BONE), word("yes"), number(7)));
      assertThat(open.asks()).containsExactly(BONE);
      assertThat(open.settles()).containsExactly(BONE);
    }

    @Test
    void and_does_not_take_the_number_to_settle_it_where_the_limit_is_open() {
      Verdict.Unknown open = unknown(verdict(unknown(BONE), word("yes"), range(5, 9)));
      assertThat(open.asks()).containsExactly(BONE, LENGTH);
      assertThat(open.settles()).isEmpty();
    }

    @Test
    void and_takes_the_number_to_settle_it_where_the_bone_makes_no_difference() {
      Verdict.Unknown open = unknown(verdict(word("tibia"), word("yes"), range(5, 9)));
      assertThat(open.asks()).containsExactly(LENGTH);
      assertThat(open.settles()).containsExactly(LENGTH);
    }

    @Test
    void and_no_one_fact_settles_it_where_each_needs_another() {
      Verdict.Unknown open = unknown(verdict(unknown(BONE), unknown(PLATE), number(7)));
      assertThat(open.asks()).containsExactlyInAnyOrder(BONE, PLATE);
      assertThat(open.settles()).isEmpty();
    }

    @Test
    void and_one_fact_settles_several_needs_at_once() {
      Verdict.Unknown open = unknown(verdict(unknown(LENGTH), word("yes"), unknown(LENGTH)));
      assertThat(open.asks()).containsExactly(LENGTH);
      assertThat(open.settles()).containsExactly(LENGTH);
    }
  }
}
