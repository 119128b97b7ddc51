package org.bonewright.casefile.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ProblemTest {

  @Test
  void is_one_paragraph_with_place_and_hint() {
    Problem problem =
        Problem.error("/bone/side", "the text \"lefft\"", "one of left, right")
            .withHint("Did you mean \"left\"?")
            .at(new Place(4, 13));
    assertThat(problem.inWords())
        .isEqualTo(
            "Error at /bone/side (line 4, column 13): found the text \"lefft\"; "
                + "allowed: one of left, right. Did you mean \"left\"?");
  }

  @Test
  void needs_neither_place_nor_hint() {
    assertThat(Problem.warning("", "no outcome", "an outcome").inWords())
        .isEqualTo("Warning in the file: found no outcome; allowed: an outcome.");
  }

  @Test
  void a_warning_is_not_an_error() {
    assertThat(Problem.warning("/a", "x", "y").isError()).isFalse();
    assertThat(Problem.error("/a", "x", "y").isError()).isTrue();
  }

  @Test
  void pointers_escape_tilde_and_slash() {
    assertThat(Problem.pointer("/a", "b/c~d")).isEqualTo("/a/b~1c~0d");
  }

  @Test
  void a_quoted_text_is_short_and_shows_what_is_invisible() {
    assertThat(Quoted.of("a\nb\u001b[31m\u202e")).isEqualTo("\"a\\u000ab\\u001b[31m\\u202e\"");
    assertThat(Quoted.of("x".repeat(5000))).hasSize(63).endsWith("x…\"");
  }
}
