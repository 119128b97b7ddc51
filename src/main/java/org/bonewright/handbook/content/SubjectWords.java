package org.bonewright.handbook.content;

import org.bonewright.principles.Card;

/** Says what a principle is judged on. */
final class SubjectWords {

  private SubjectWords() {}

  static String of(Card.SubjectKind subject) {
    return switch (subject) {
      case OPERATION -> "each operation and each stage of a plan";
      case PLAN -> "a plan as a whole, and each past operation that was itself a revision";
      case CASE -> "the case: each plan as a whole, or the last operation where there is no plan";
    };
  }
}
