package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a card says is complete, and is what its rules do. */
class CardsTest {

  private static final Pattern SLOT = Pattern.compile("\\{([^}]*)}");

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void verdicts_are_those_that_its_rules_reach(Card card) {
    assertThat(card.verdicts())
        .as(card.id())
        .containsExactlyInAnyOrderElementsOf(
            AllCells.of(card).stream()
                .map(world -> AllCells.said(world).kind())
                .distinct()
                .toList());
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void grades_are_those_that_its_rules_reach_mildest_first(Card card) {
    assertThat(card.grades())
        .as(card.id())
        .containsExactlyElementsOf(
            AllCells.of(card).stream()
                .map(AllCells::said)
                .filter(said -> said.kind() == VerdictKind.UNMET)
                .map(WorldVerdict::severity)
                .collect(Collectors.toCollection(TreeSet::new)));
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void no_grade_is_graver_than_the_gravest_that_it_can_have(Card card) {
    assertThat(card.grades()).as(card.id()).allMatch(grade -> grade.compareTo(card.highest()) <= 0);
  }

  /** A sentence that no world reaches is as dead as a condition. */
  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void every_sentence_on_unmet_is_reached(Card card) {
    assertThat(
            AllCells.of(card).stream()
                .map(AllCells::said)
                .filter(said -> said.kind() == VerdictKind.UNMET)
                .map(WorldVerdict::limit)
                .collect(Collectors.toSet()))
        .as(card.id())
        .isEqualTo(card.say().unmet().keySet());
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void there_are_not_too_many_worlds(Card card) {
    assertThat(AllCells.RULES.worlds(card).count()).as(card.id()).isLessThanOrEqualTo(Worlds.MOST);
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void every_slot_in_its_words_can_be_filled(Card card) {
    Set<String> names = new TreeSet<>(card.needs().keySet());
    names.addAll(card.limits().keySet());
    assertThat(slots(card.say().met())).as(card.id()).isSubsetOf(names);
    assertThat(slots(card.say().notApplicable())).as(card.id()).isSubsetOf(names);
    card.say()
        .unmet()
        .forEach(
            (limit, text) -> {
              Set<String> known = new TreeSet<>(names);
              if (card.limits().containsKey(limit)) {
                known.add("limit");
              }
              assertThat(slots(text)).as(card.id() + " " + limit).isSubsetOf(known);
            });
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void what_it_tells_beside_is_a_measure_and_stands_beside_a_verdict_that_it_gives(Card card) {
    for (Card.Told told : card.tells()) {
      assertThat(AllCells.RULES.definition(told.of()).id()).isEqualTo(told.of());
      assertThat(told.with()).as(card.id()).isNotEmpty().isSubsetOf(card.verdicts());
      assertThat(slots(told.say())).as(card.id()).containsExactly("it");
    }
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_remedy_names_limits_of_its_card_alone(Card card) {
    assertThat(slots(card.remedy())).as(card.id()).isSubsetOf(card.limits().keySet());
    assertThat(Remedy.of(card)).as(card.id()).doesNotContain("{", "}");
  }

  private static List<String> slots(String text) {
    assertThat(text.replaceAll(SLOT.pattern(), "")).doesNotContain("{", "}");
    return SLOT.matcher(text).results().map(slot -> slot.group(1)).toList();
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void every_limit_names_its_evidence(Card card) {
    assertThat(card.limits().values()).as(card.id()).allMatch(limit -> !limit.evidence().isBlank());
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void it_names_a_source_and_how_to_clear_it(Card card) {
    assertThat(card.sources()).as(card.id()).isNotEmpty();
    assertThat(card.sources()).as(card.id()).allMatch(source -> !source.text().isBlank());
    assertThat(card.remedyMoves())
        .as(card.id())
        .isNotEmpty()
        .doesNotHaveDuplicates()
        .allMatch(move -> move.matches("[a-z]+(-[a-z]+)*"));
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_dispute_is_about_limits_that_it_has(Card card) {
    card.disputed()
        .ifPresent(
            dispute -> {
              assertThat(dispute.limits()).as(card.id()).isNotEmpty().doesNotHaveDuplicates();
              assertThat(card.limits().keySet()).as(card.id()).containsAll(dispute.limits());
            });
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_title_is_short_and_a_statement_is_a_sentence(Card card) {
    assertThat(card.title()).doesNotEndWith(".").hasSizeLessThanOrEqualTo(50);
    assertThat(card.title()).matches("[A-Z].*");
    assertThat(
            Stream.concat(
                Stream.of(
                    card.statement(),
                    card.why(),
                    card.remedy(),
                    card.say().met(),
                    card.say().notApplicable()),
                Stream.concat(
                    card.say().unmet().values().stream(),
                    card.tells().stream().map(Card.Told::say))))
        .as(card.id())
        .allMatch(sentence -> sentence.endsWith("."));
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void it_is_judged_after_what_it_reads(Card card) {
    boolean counts =
        card.needs().values().stream().anyMatch(m -> VerdictCounts.definition(m).isPresent());
    assertThat(card.level()).as(card.id()).isIn(counts ? List.of(2) : List.of(1, 2));
  }

  @Test
  void no_former_id_is_still_in_use() {
    List<String> former = AllCells.cards().stream().flatMap(c -> c.formerIds().stream()).toList();
    assertThat(former).doesNotHaveDuplicates();
    assertThat(AllCells.cards()).extracting(Card::id).noneMatch(former::contains);
  }
}
