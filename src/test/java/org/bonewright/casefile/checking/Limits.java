package org.bonewright.casefile.checking;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.api.ListAssert;

/** Words and pointers of the tests that feel their way to both sides of a limit. */
final class Limits {

  static final String OP_1 = "/operations/0";
  static final String OP_2 = "/operations/1";
  static final String OP_3 = "/operations/2";
  static final String PLATE = "/operations/0/fixation/0";
  static final String LAG = "/operations/0/fixation/1";

  private Limits() {}

  /** Begin an assertion about what the checks object to. */
  static ListAssert<String> assertObjections(Altered file) {
    return assertThat(file.objections());
  }

  /** Assert that the checks object to nothing. */
  static void assertSound(Altered file) {
    assertThat(file.problems()).isEmpty();
  }
}
