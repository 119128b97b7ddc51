package org.bonewright.measures.healing;

import java.util.Optional;
import org.bonewright.measures.Subject;

/** Which part of the history a measure of healing looks at. */
enum Stretch {
  /** After the operation judged, until the next. */
  AFTER("after the operation, until the next one"),
  /** Before the operation or plan judged, since the last one that put in metal or graft. */
  BEFORE("since the last operation before that put in metal or graft, else since the injury"),
  /** What a case as it stands looks back on. */
  STANDING(
      "of a plan: since the last operation that put in metal or graft, else since the injury; of an"
          + " operation: after it"),
  /** From the injury to the first operation, or up to now where there is none. */
  WITHOUT_OPERATION("from the injury to the first operation");

  private final String inWords;

  Stretch(String inWords) {
    this.inWords = inWords;
  }

  /** Return which time it is, for the formula of a measure. */
  String inWords() {
    return inWords;
  }

  /** Return the course; empty after what is still planned. */
  Optional<Course> of(Subject subject) {
    return switch (this) {
      case AFTER -> Course.after(subject);
      case BEFORE -> Optional.of(Course.leadingTo(subject));
      case WITHOUT_OPERATION -> Optional.of(Course.beforeAnyOperation(subject.caseFile()));
      case STANDING -> Optional.of(Course.standing(subject));
    };
  }
}
