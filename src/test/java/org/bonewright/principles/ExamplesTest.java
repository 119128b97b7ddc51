package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;
import static org.junit.jupiter.params.provider.Arguments.argumentSet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Examples.CaseLine;
import org.bonewright.principles.Examples.Line;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds every principle to its examples, and the examples to what they must show. */
class ExamplesTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final Judge JUDGE = new Judge(RULES);
  private static final Map<String, Examples> READ = new ConcurrentHashMap<>();
  private static final Map<String, JudgedCase> UNCHANGED = new ConcurrentHashMap<>();

  @TestFactory
  Stream<DynamicTest> lines() {
    return of(card -> examples(card).lines().stream().map(line -> test(card, line)));
  }

  @TestFactory
  Stream<DynamicTest> cases() {
    return of(card -> examples(card).cases().stream().map(line -> test(card, line)));
  }

  @Test
  void every_card_has_its_examples_and_no_examples_are_without_a_card() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      assertThat(
              files
                  .filter(file -> file.toString().endsWith(Examples.ENDING))
                  .filter(file -> !file.equals(PrecedenceMutantsTest.EXAMPLES)))
          .containsExactlyInAnyOrderElementsOf(
              cards().map(card -> Examples.file(RULES, card)).toList());
    }
  }

  @ParameterizedTest
  @MethodSource("named")
  void lines_show_every_verdict_of_the_card_and_unknown(Card card) {
    List<VerdictKind> kinds = new ArrayList<>(card.verdicts());
    kinds.add(VerdictKind.UNKNOWN);
    assertThat(examples(card).lines())
        .extracting(line -> Shorthand.kind(line.expect()))
        .hasSameElementsAs(kinds);
  }

  @ParameterizedTest
  @MethodSource("named")
  void cases_show_the_principle_met_and_unmet(Card card) {
    assertThat(examples(card).cases())
        .extracting(line -> Shorthand.kind(line.expect()))
        .contains(VerdictKind.MET, VerdictKind.UNMET);
  }

  @ParameterizedTest
  @MethodSource("named")
  void lines_show_every_limit_from_below_on_it_and_from_above(Card card) {
    assertThat(new LimitSides(card, examples(card).lines()).unproved()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("named")
  void every_rule_is_needed_by_a_line(Card card) {
    LineJudge judge = new LineJudge(card, RULES);
    List<Line> lines = examples(card).lines();
    assertThat(judge.rules())
        .isNotEmpty()
        .allSatisfy(
            rule ->
                assertThat(judge.without(rule, lines))
                    .as("verdicts without the rule \"%s\"", rule.getName())
                    .anySatisfy(
                        (line, verdict) ->
                            assertThat(Shorthand.of(verdict)).isNotEqualTo(line.expect())));
  }

  private static DynamicTest test(Card card, Line line) {
    return dynamicTest(
        card.id() + ": " + line.say(),
        () ->
            assertThat(Shorthand.of(new LineJudge(card, RULES).verdict(line)))
                .as(Shorthand.of(line.readings()))
                .isEqualTo(line.expect()));
  }

  private static DynamicTest test(Card card, CaseLine line) {
    return dynamicTest(
        card.id() + ": " + line.say(),
        () -> {
          Judgement judgement = judgement(card, line);
          String readings = Shorthand.of(judgement.readings());
          assertThat(shown(judgement.readings(), line)).as(readings).isEqualTo(line.read());
          assertThat(Shorthand.of(judgement.verdict())).as(readings).isEqualTo(line.expect());
        });
  }

  private static Judgement judgement(Card card, CaseLine line) {
    JudgedCase judged = judged(line);
    Subject subject =
        judged.subjects().stream()
            .filter(s -> s.id().equals(line.on()))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no subject " + line.on()));
    return judged
        .of(subject, card.id())
        .orElseThrow(() -> new IllegalArgumentException("not judged on " + line.on()));
  }

  /** Many cards look at a base case as it is; it is judged once. */
  private static JudgedCase judged(CaseLine line) {
    return line.patch().strip().equals("[]")
        ? UNCHANGED.computeIfAbsent(line.base(), base -> judged(BaseCase.of(base)))
        : judged(BaseCase.of(line.base()).patched(line.patch()));
  }

  private static JudgedCase judged(BaseCase base) {
    return JUDGE.judge(base.caseFile());
  }

  private static Map<String, String> shown(Map<String, Reading> readings, CaseLine line) {
    return line.read().keySet().stream()
        .collect(Collectors.toMap(Function.identity(), need -> readings.get(need).shown()));
  }

  private static Stream<DynamicTest> of(Function<Card, Stream<DynamicTest>> tests) {
    return cards().flatMap(tests);
  }

  private static Stream<Card> cards() {
    return RULES.cards().stream();
  }

  private static Stream<Arguments> named() {
    return cards().map(card -> argumentSet(card.id(), card));
  }

  private static Examples examples(Card card) {
    return READ.computeIfAbsent(card.id(), id -> Examples.of(RULES, card));
  }
}
