package org.bonewright.server.rest;

import java.util.List;

/** Says that a principle is not judged on what was named. */
final class NotJudgedThere extends Exception {

  private static final long serialVersionUID = 1L;

  NotJudgedThere(String principle, String on, List<String> judgedOn) {
    super(
        principle
            + " is not judged on "
            + on
            + "."
            + (judgedOn.isEmpty()
                ? " It is judged on nothing in this case."
                : " It is judged on: " + String.join(", ", judgedOn) + "."));
  }
}
