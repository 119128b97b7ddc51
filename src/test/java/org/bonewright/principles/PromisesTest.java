package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Collection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the program promises of itself is kept by tests that exist. */
class PromisesTest {

  private static final RuleSet RULES = RuleSet.built();
  private static final String CARD =
      """
      id: kept
      kind: promise
      title: Kept
      statement: It is kept.
      why: Else it is not.
      provedBy: [org.bonewright.principles.PromisesTest#a_whole_card_is_read]
      sources: [{text: project rule, read: from memory}]
      awaiting: []
      reviewedBy: nobody yet
      since: 0.4.0
      """;

  static Collection<Promise> promises() {
    return RULES.promises();
  }

  @Test
  void are_of_the_family_of_safety() {
    assertThat(promises())
        .extracting(Promise::id)
        .containsExactlyInAnyOrder(
            "unknown-is-not-met",
            "red-flag-to-human",
            "data-consistency-checked",
            "decision-stays-with-surgeon");
    assertThat(promises()).allMatch(promise -> RULES.family(promise).letter().equals("P"));
  }

  @ParameterizedTest
  @MethodSource("promises")
  void are_proved_by_tests_that_exist(Promise promise) {
    assertThat(promise.provedBy())
        .isNotEmpty()
        .doesNotHaveDuplicates()
        .allSatisfy(test -> assertThat(isTest(test)).as(test).isTrue());
  }

  private static boolean isTest(String named) throws ClassNotFoundException {
    String[] parts = named.split("#", -1);
    return parts.length == 2
        && Arrays.stream(Class.forName(parts[0]).getDeclaredMethods())
            .anyMatch(method -> method.getName().equals(parts[1]) && isTest(method));
  }

  private static boolean isTest(Method method) {
    return Arrays.stream(method.getAnnotations())
        .map(annotation -> annotation.annotationType().getSimpleName())
        .anyMatch(name -> name.matches("(Parameterized)?Test|TestFactory|Property"));
  }

  @ParameterizedTest
  @CsvSource({
    "org.bonewright.principles.PromisesTest#promises",
    "org.bonewright.principles.PromisesTest#no_such_test",
    "org.bonewright.principles.PromisesTest"
  })
  void are_not_proved_by_what_is_no_test(String named) throws ClassNotFoundException {
    assertThat(isTest(named)).isFalse();
  }

  @ParameterizedTest
  @MethodSource("promises")
  void are_no_principles_and_judge_nothing(Promise promise) {
    assertThat(RULES.card(promise.id())).isEmpty();
  }

  @Test
  void a_whole_card_is_read() {
    assertThat(PromiseReader.isPromise(CardText.of(CARD, "kept"))).isTrue();
    assertThat(PromiseReader.read("kept", CardText.of(CARD, "kept")).provedBy())
        .containsExactly("org.bonewright.principles.PromisesTest#a_whole_card_is_read");
  }

  @ParameterizedTest(name = "{0} made {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          id: kept             | id: other          | the id in the card is another
          kind: promise        | kind: principle    | kind is not promise
          provedBy: [.*]       | provedBy: []       | no test proves
          title: Kept          | heading: Kept      | title
          """)
  void a_faulty_card_is_refused(String line, String made, String words) {
    String faulty = CARD.replaceFirst("(?m)^" + line.replace("[", "\\[") + "$", made);

    assertThat(faulty).isNotEqualTo(CARD);
    assertThatThrownBy(() -> PromiseReader.read("kept", CardText.of(faulty, "kept")))
        .hasMessageContaining(words);
  }
}
