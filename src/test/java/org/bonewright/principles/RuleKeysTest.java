package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.measures.Definition.Domain;
import org.bonewright.measures.Definition.Domain.Words;
import org.bonewright.principles.Card.Limit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules and cards speak of the same things: a misspelt key compiles, and fails when reached. */
class RuleKeysTest {

  private static final Map<String, List<RuleText>> RULES =
      RuleText.all(RuleFiles.built()).stream().collect(Collectors.groupingBy(RuleText::principle));

  private static final Pattern CHOICE = Pattern.compile("choice\\(\"(\\w+)\"\\)");
  private static final Pattern VALUE = Pattern.compile("value\\(\"(\\w+)\"\\)");
  private static final Pattern LIMIT = Pattern.compile("limit\\(\"(\\w+)\"\\)");
  private static final Pattern ONE_WORD =
      Pattern.compile("choice\\(\"\\w+\"\\) [!=]= \"([a-z0-9-]+)\"");
  private static final Pattern ONE_OF_WORDS =
      Pattern.compile("choice\\(\"\\w+\"\\) (?:not )?in \\(((?:\"[a-z0-9-]+\"(?:, )?)+)\\)");
  private static final Pattern AGAINST_A_LIMIT =
      Pattern.compile("value\\(\"(\\w+)\"\\) (?:<|<=|>|>=|==) limit\\(\"(\\w+)\"\\)");
  private static final Pattern BEING = Pattern.compile("value\\(\"\\w+\"\\) [!=]= null");

  private static List<RuleText> rules(Card card) {
    return RULES.getOrDefault(card.id(), List.of());
  }

  private static List<String> comparisons(Card card) {
    return rules(card).stream().flatMap(rule -> rule.comparisons().stream()).toList();
  }

  private static Set<String> keys(Card card, Pattern pattern) {
    return comparisons(card).stream()
        .flatMap(comparison -> pattern.matcher(comparison).results())
        .map(result -> result.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Cells are cut at limits only: on any other number the worlds would not see the difference. */
  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_value_is_compared_with_its_own_limits_only(Card card) {
    for (String comparison : comparisons(card)) {
      assertThat(comparison)
          .as(card.id())
          .matches(
              text ->
                  Stream.of(ONE_WORD, ONE_OF_WORDS, AGAINST_A_LIMIT, BEING)
                      .anyMatch(form -> form.matcher(text).matches()));
      AGAINST_A_LIMIT
          .matcher(comparison)
          .results()
          .forEach(
              result ->
                  assertThat(card.limits().get(result.group(2)))
                      .as(card.id() + ": " + comparison)
                      .isNotNull()
                      .extracting(Limit::of)
                      .isEqualTo(result.group(1)));
    }
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void needs_in_rules_are_those_of_the_card(Card card) {
    Set<String> used = new TreeSet<>(keys(card, CHOICE));
    used.addAll(keys(card, VALUE));
    card.limits().values().forEach(limit -> used.addAll(limit.by()));
    assertThat(used).as(card.id()).isEqualTo(card.needs().keySet());
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void words_and_numbers_are_not_confused(Card card) {
    assertThat(keys(card, CHOICE))
        .as(card.id())
        .allMatch(need -> domain(card, need) instanceof Words);
    assertThat(keys(card, VALUE))
        .as(card.id())
        .noneMatch(need -> domain(card, need) instanceof Words);
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void limits_in_rules_are_those_of_the_card(Card card) {
    assertThat(keys(card, LIMIT)).as(card.id()).isEqualTo(card.limits().keySet());
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void words_in_rules_are_words_that_the_measure_gives(Card card) {
    for (String comparison : comparisons(card)) {
      CHOICE
          .matcher(comparison)
          .results()
          .forEach(
              choice -> {
                Domain domain = domain(card, choice.group(1));
                assertThat(domain).as(comparison).isInstanceOf(Words.class);
                assertThat(((Words) domain).words())
                    .as(card.id() + ": " + comparison)
                    .containsAll(words(comparison.substring(choice.end())));
              });
    }
  }

  private static List<String> words(String text) {
    return Pattern.compile("\"([^\"]+)\"").matcher(text).results().map(r -> r.group(1)).toList();
  }

  private static Domain domain(Card card, String need) {
    return AllCells.RULES.definition(card.needs().get(need)).domain();
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void grades_in_rules_are_those_of_the_card(Card card) {
    assertThat(unmet(card).map(RuleText::grade).collect(Collectors.toSet()))
        .as(card.id())
        .isEqualTo(card.grades().stream().map(Severity::word).collect(Collectors.toSet()));
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void there_are_words_for_every_way_to_be_unmet_and_no_others(Card card) {
    assertThat(unmet(card).map(RuleText::limit).collect(Collectors.toSet()))
        .as(card.id())
        .isEqualTo(card.say().unmet().keySet());
  }

  private static Stream<RuleText> unmet(Card card) {
    return rules(card).stream().filter(RuleText::unmet);
  }

  /** Words that fill a sentence are looked up by these names; two of one name would be mixed up. */
  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void no_need_has_the_name_of_a_limit(Card card) {
    assertThat(card.needs()).as(card.id()).doesNotContainKey("limit");
    assertThat(card.limits()).as(card.id()).doesNotContainKey("limit");
    assertThat(card.needs().keySet()).as(card.id()).noneMatch(card.limits()::containsKey);
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void limits_cut_a_number_and_differ_by_words(Card card) {
    card.limits()
        .forEach(
            (name, limit) -> {
              assertThat(card.needs()).as(name).containsKey(limit.of());
              assertThat(domain(card, limit.of())).as(name).isInstanceOf(Domain.Numbers.class);
              assertThat(limit.by())
                  .as(name)
                  .doesNotHaveDuplicates()
                  .allSatisfy(need -> assertThat(domain(card, need)).isInstanceOf(Words.class));
            });
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void every_line_of_a_limit_is_for_words_that_occur(Card card) {
    card.limits()
        .forEach(
            (name, limit) -> {
              Set<String> combinations = new HashSet<>(Set.of(""));
              for (String need : limit.by()) {
                combinations =
                    combinations.stream()
                        .flatMap(
                            before ->
                                ((Words) domain(card, need))
                                    .words().stream().map(word -> (before + " " + word).strip()))
                        .collect(Collectors.toSet());
              }
              Set<String> lines = new HashSet<>(limit.values().keySet());
              boolean rest = lines.remove("otherwise");
              if (!limit.by().isEmpty()) {
                assertThat(combinations).as(card.id() + " " + name).containsAll(lines);
                assertThat(rest && lines.containsAll(combinations))
                    .as(card.id() + " " + name + ": otherwise is never reached")
                    .isFalse();
              }
            });
  }
}
