package org.bonewright.review;

import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;

/** Tells whether an operation failed. */
final class Failed {

  private Failed() {}

  static boolean is(Operation operation) {
    return operation
        .outcome()
        .map(outcome -> outcome.result() == Outcome.Result.FAILED)
        .orElse(false);
  }
}
