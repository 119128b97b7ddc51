package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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

/** On a small card: a bone, a ratio with a limit by bone, and a count. */
class WorldsTest {

  private static final Map<String, Definition.Domain> DOMAINS =
      Map.of(
          "bone", Definition.words("femur", "tibia", "ulna"),
          "ratio", Definition.ratio(),
          "screws", Definition.count(1));
  private static final Card CARD =
      TestCards.card(
          "small",
          Map.of("bone", "bone", "ratio", "ratio", "screws", "screws"),
          Map.of(
              "least",
              new Limit("ratio", List.of("bone"), Map.of("femur", 8.0, "tibia", 6.0), ""),
              "enough",
              TestCards.limit("screws", 3)));
  private static final Worlds WORLDS = new Worlds(CARD, WorldsTest::definition);

  private static final Reading UNKNOWN = Reading.unknown(new MissingFact("field", "?"));

  private static Definition definition(String id) {
    return new Definition(id, id, DOMAINS.get(id), "", List.of(), "");
  }

  private static Map<String, Reading> readings(Reading bone, Reading ratio, Reading screws) {
    return new TreeMap<>(Map.of("bone", bone, "ratio", ratio, "screws", screws));
  }

  private static List<String> shown(List<World> worlds, String need) {
    return worlds.stream().map(world -> world.cell(need).shown()).toList();
  }

  @Test
  void come_words_first() {
    assertThat(WORLDS.needs()).containsExactly("bone", "ratio", "screws");
  }

  @Nested
  class AllOfThem {

    @Test
    void are_every_word_with_every_cell_of_its_own_limits() {
      List<World> all = WORLDS.all();
      assertThat(all).hasSize((3 + 3 + 1) * 3).hasSize(WORLDS.count());
      assertThat(ratios(all, "femur")).containsExactly("between 0 and 8", "8", "above 8");
      assertThat(ratios(all, "tibia")).containsExactly("between 0 and 6", "6", "above 6");
      assertThat(ratios(all, "ulna")).containsExactly("above 0");
    }

    private static List<String> ratios(List<World> worlds, String bone) {
      return worlds.stream()
          .filter(world -> world.choice("bone").equals(bone))
          .map(world -> world.cell("ratio").shown())
          .distinct()
          .toList();
    }

    @Test
    void are_what_is_left_when_nothing_is_known() {
      assertThat(WORLDS.of(readings(UNKNOWN, UNKNOWN, UNKNOWN)))
          .extracting(World::cells)
          .containsExactlyElementsOf(WORLDS.all().stream().map(World::cells).toList());
    }
  }

  @Nested
  class Left {

    @Test
    void is_one_when_everything_is_known() {
      List<World> worlds =
          WORLDS.of(
              readings(Reading.word("femur", ""), Reading.number(7, ""), Reading.number(3, "")));
      assertThat(worlds).hasSize(1);
      assertThat(worlds.get(0).value("ratio")).isLessThan(8);
      assertThat(worlds.get(0).value("screws")).isEqualTo(3);
      assertThat(worlds.get(0).limit("least")).isEqualTo(8);
    }

    @Test
    void are_the_cells_that_a_range_touches() {
      Reading range = new Reading.Amount(6, 8, Kind.FACT, "", List.of());
      List<World> femur =
          WORLDS.of(readings(Reading.word("femur", ""), range, Reading.number(9, "")));
      List<World> tibia =
          WORLDS.of(readings(Reading.word("tibia", ""), range, Reading.number(9, "")));
      assertThat(shown(femur, "ratio")).containsExactly("between 0 and 8", "8");
      assertThat(shown(tibia, "ratio")).containsExactly("6", "above 6");
    }

    @Test
    void are_the_cells_in_which_a_sample_lies() {
      Reading sampled = new Reading.Sampled(7, List.of(9.0, 5.0, 9.5), "", "", List.of());
      List<World> femur =
          WORLDS.of(readings(Reading.word("femur", ""), sampled, Reading.number(9, "")));
      assertThat(shown(femur, "ratio")).containsExactly("between 0 and 8", "above 8");
    }

    @Test
    void are_all_cells_of_what_is_sampled_where_the_model_is_left_aside() {
      Reading sampled = new Reading.Sampled(9, List.of(9.0), "", "", List.of());
      Reading femur = Reading.word("femur", "");
      assertThat(
              shown(
                  WORLDS.whateverTheModel(readings(femur, sampled, Reading.number(9, ""))),
                  "ratio"))
          .containsExactly("between 0 and 8", "8", "above 8");
      assertThat(
              WORLDS.whateverTheModel(
                  readings(femur, Reading.number(9, ""), Reading.number(9, ""))))
          .isEmpty();
    }

    @Test
    void are_the_words_that_a_choice_holds() {
      Reading choice = Reading.words(Set.of("tibia", "femur"), Kind.FACT, "");
      List<World> worlds =
          WORLDS.of(readings(choice, Reading.number(7, ""), Reading.number(9, "")));
      assertThat(shown(worlds, "bone")).containsExactly("femur", "tibia");
      assertThat(shown(worlds, "ratio")).containsExactly("between 0 and 8", "above 6");
    }

    @Test
    void have_nothing_where_there_is_nothing() {
      Reading none = new Reading.None("a nail has no plate span");
      World world =
          WORLDS.of(readings(Reading.word("femur", ""), none, Reading.number(9, ""))).get(0);
      assertThat(world.value("ratio")).isNull();
      assertThat(world.choice("ratio")).isEqualTo("none");
    }

    @Test
    void take_a_count_between_two_whole_ones_as_either() {
      Reading half = Reading.number(2.5, "");
      assertThat(WORLDS.of(readings(Reading.word("femur", ""), Reading.number(7, ""), half)))
          .hasSizeGreaterThan(1);
    }

    @Test
    void cannot_be_formed_of_a_number_that_the_need_cannot_be() {
      Reading femur = Reading.word("femur", "");
      assertThatThrownBy(() -> WORLDS.of(readings(femur, Reading.number(-1, ""), UNKNOWN)))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("ratio");
    }

    @Test
    void cannot_be_formed_without_a_reading() {
      assertThatThrownBy(() -> WORLDS.of(Map.of("bone", UNKNOWN, "screws", UNKNOWN)))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("ratio");
    }
  }

  @Nested
  class Neighbours {

    private final World world =
        WORLDS
            .of(readings(Reading.word("femur", ""), Reading.number(7, ""), Reading.number(2, "")))
            .get(0);

    @Test
    void run_along_the_line_of_one_need() {
      List<World> along = WORLDS.neighbours(world, "ratio");
      assertThat(shown(along, "ratio")).containsExactly("between 0 and 8", "8", "above 8");
      assertThat(along).extracting(w -> w.cell("screws")).containsOnly(world.cell("screws"));
      assertThat(along).extracting(w -> w.choice("bone")).containsOnly("femur");
      assertThat(shown(along, "ratio")).contains(world.cell("ratio").shown());
    }

    @Test
    void keep_what_is_nothing() {
      Map<String, Reading> readings =
          readings(Reading.word("femur", ""), new Reading.None("no plate"), Reading.number(2, ""));
      World without = WORLDS.of(readings).get(0);
      assertThat(WORLDS.neighbours(without, "screws"))
          .hasSize(3)
          .allMatch(w -> w.value("ratio") == null);
    }
  }

  @Nested
  class OneWorld {

    private final World world = WORLDS.all().get(0);

    @Test
    void refuses_a_need_or_limit_that_the_card_has_not() {
      assertThatThrownBy(() -> world.choice("bune")).hasMessageContaining("bune");
      assertThatThrownBy(() -> world.value("ration")).hasMessageContaining("ration");
      assertThatThrownBy(() -> world.limit("lest")).hasMessageContaining("lest");
    }

    @Test
    void has_no_number_for_a_limit_that_does_not_hold_for_its_words() {
      World ulna =
          WORLDS.all().stream().filter(w -> w.choice("bone").equals("ulna")).toList().get(0);
      assertThat(ulna.limit("least")).isNull();
      assertThat(ulna.limit("enough")).isEqualTo(3);
    }

    @Test
    void is_no_other_though_it_looks_the_same() {
      assertThat(world).isNotEqualTo(WORLDS.all().get(0));
    }

    @Test
    void has_no_negative_zero() {
      World zero =
          PlainWorld.of(
              CARD, Map.of("bone", PlainWorld.word("femur"), "ratio", PlainWorld.number(-0.0)));
      assertThat(Double.compare(zero.value("ratio"), 0.0)).isZero();
    }
  }
}
