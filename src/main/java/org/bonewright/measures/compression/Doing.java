package org.bonewright.measures.compression;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Scene;

/**
 * Whether something is done in any step of a subject. A plan is closed: what no step names is not
 * planned. In the past what is not recorded is unknown.
 */
enum Doing {
  DONE,
  NOT_DONE,
  UNKNOWN;

  /** Return the best answer of any step. */
  static Doing in(Scene scene, Function<Operation, Optional<Answer>> question) {
    Answer silent = scene.subject().planned() ? Answer.NO : Answer.UNKNOWN;
    List<Answer> answers =
        scene.subject().steps().stream().map(step -> question.apply(step).orElse(silent)).toList();
    if (answers.contains(Answer.YES)) {
      return DONE;
    }
    return answers.contains(Answer.UNKNOWN) ? UNKNOWN : NOT_DONE;
  }
}
