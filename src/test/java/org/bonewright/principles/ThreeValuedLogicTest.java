package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bonewright.measures.Definition;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.kie.dmn.feel.FEEL;

/**
 * Agreement of all worlds is three-valued logic: for and, or and not of what may be unknown, the
 * verdict is what the expression language of decision models (FEEL) gives, which was written by
 * others. True is met, false is unmet, null is unknown.
 */
class ThreeValuedLogicTest {

  /** Each expression, and the conditions under which a rule calls it unmet. */
  private static final Map<String, List<String>> EXPRESSIONS =
      Map.of(
          "a and b", List.of("choice(\"a\") == \"no\"", "choice(\"b\") == \"no\""),
          "a or b", List.of("choice(\"a\") == \"no\", choice(\"b\") == \"no\""),
          "not(a)", List.of("choice(\"a\") == \"yes\""),
          "not(a and b)", List.of("choice(\"a\") == \"yes\", choice(\"b\") == \"yes\""),
          "a and not(b)", List.of("choice(\"a\") == \"no\" || choice(\"b\") == \"yes\""),
          "not(a) or b", List.of("choice(\"a\") == \"yes\", choice(\"b\") != \"yes\""),
          "a or not(a)", List.of("choice(\"a\") == \"yes\", choice(\"a\") == \"no\""));

  private static final MemoryRules RULES = new MemoryRules("three-valued-logic", drl());
  private static final FEEL FEEL_ENGINE =
      FEEL.newInstance(ThreeValuedLogicTest.class.getClassLoader(), List.of());

  private static List<String> drl() {
    List<String> rules = new ArrayList<>();
    EXPRESSIONS.forEach(
        (expression, unmet) -> {
          String world = "$w : World( principle == \"" + expression + "\"";
          rules.add(rule(expression, world + " )", "verdicts.applies($w);"));
          unmet.forEach(
              when ->
                  rules.add(
                      rule(
                          expression + " unmet: " + when.replace('"', '\''),
                          world + ", " + when + " )",
                          "verdicts.unmet($w, \"minor\", \"it\");")));
        });
    return rules;
  }

  private static String rule(String name, String when, String then) {
    return "rule \"%s\" when %s then %s end".formatted(name, when, then);
  }

  static Stream<Arguments> combinations() {
    List<Boolean> values = Arrays.asList(true, false, null);
    return EXPRESSIONS.keySet().stream()
        .filter(expression -> !expression.equals("a or not(a)"))
        .sorted()
        .flatMap(
            expression ->
                values.stream()
                    .flatMap(a -> values.stream().map(b -> Arguments.of(expression, a, b))));
  }

  @ParameterizedTest
  @MethodSource("combinations")
  void the_verdict_is_that_of_the_expression(String expression, Boolean a, Boolean b) {
    Map<String, Object> values = new HashMap<>();
    values.put("a", a);
    values.put("b", b);
    Object expected = FEEL_ENGINE.evaluate(expression, values);
    assertThat(verdict(expression, a, b))
        .isEqualTo(
            expected == null
                ? VerdictKind.UNKNOWN
                : expected.equals(true) ? VerdictKind.MET : VerdictKind.UNMET);
  }

  /** Where an input occurs twice, worlds know more than any table of truth values. */
  @Test
  void what_holds_either_way_is_met_though_the_input_is_unknown() {
    Map<String, Object> values = new HashMap<>();
    values.put("a", null);
    assertThat(FEEL_ENGINE.evaluate("a or not(a)", values)).isNull();
    assertThat(verdict("a or not(a)", null, true)).isEqualTo(VerdictKind.MET);
  }

  private static VerdictKind verdict(String expression, Boolean a, Boolean b) {
    Map<String, Reading> readings = Map.of("a", reading("a", a), "b", reading("b", b));
    Worlds former = new Worlds(card(expression), measure -> yesOrNo(measure));
    List<World> worlds = former.of(readings);
    Verdicts said = RULES.judge(worlds);
    return new CardVerdict(former, worlds, said, readings).verdict().kind();
  }

  private static Reading reading(String need, Boolean value) {
    if (value == null) {
      return Reading.unknown(new MissingFact(need, "Is it so?"));
    }
    return Reading.word(value ? "yes" : "no", "");
  }

  private static Definition yesOrNo(String id) {
    return new Definition(id, id, Definition.yesOrNo(), "", List.of(), "");
  }

  private static Card card(String id) {
    return TestCards.card(id, Map.of("a", "a", "b", "b"), Map.of());
  }
}
