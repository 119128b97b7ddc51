package org.bonewright.mechanics.model;

import org.bonewright.mechanics.answer.LoadAnswer;

/**
 * What the model says of a load: an answer, or why there is none. Never a number in place of it.
 */
public sealed interface Outcome {

  /** An answer. */
  record Answered(LoadAnswer answer) implements Outcome {}

  /**
   * No answer.
   *
   * @param why in a sentence
   */
  record None(String why) implements Outcome {}
}
