package org.bonewright.casefile.checking;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.reading.Problem;

/** What a message to a person who fills in case files must be like. */
final class FriendlyWords {

  private static final String INSIDE_OF_THE_PROGRAM =
      "(?s).*(java\\.|org\\.bonewright|Exception|Optional|\\bat [a-z]+\\.[A-Z]|@[0-9a-f]{5}).*";

  private FriendlyWords() {}

  static void assertFriendly(Problem problem) {
    assertWords(problem.found());
    assertWords(problem.allowed());
    problem.hint().ifPresent(hint -> assertThat(hint).matches("(?s)[A-Z\"].*[.?!]"));
    assertThat(problem.inWords()).contains(problem.pointer());
  }

  /** The words follow "found" or "allowed" and are followed by a semicolon or a full stop. */
  private static void assertWords(String words) {
    assertThat(words)
        .isNotBlank()
        .doesNotContain("\n")
        .doesNotMatch(INSIDE_OF_THE_PROGRAM)
        .doesNotEndWith(".");
    assertThat(words.length()).isBetween(2, 900);
  }
}
