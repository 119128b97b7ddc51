package org.bonewright.measures.force;

import org.bonewright.measures.Reading;

/**
 * There is no construct to solve, or no answer: what every measure of forces then reads.
 *
 * @param reading unknown where facts are missing that have no usual range, none where the model
 *     does not know such a construct
 */
record Refused(Reading reading) implements Sketch.Attempt, Forces {

  /** Refuse what the model does not know, for this reason, a short clause. */
  static Refused outside(String why) {
    return new Refused(new Reading.None(why));
  }
}
