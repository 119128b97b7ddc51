package org.bonewright.report;

import java.util.stream.Collectors;
import org.bonewright.review.Chapter;
import org.bonewright.review.Question;
import org.bonewright.review.Review;

/** A question to find out first, as every renderer says it. */
public final class QuestionText {

  private QuestionText() {}

  /**
   * Return the question, what it is about, and what an answer alone would settle.
   *
   * @param question the question
   * @param review the review that asks it
   * @param most how many verdicts to name; at least 1
   */
  public static String of(Question question, Review review, int most) {
    return about(question, review) + question.question() + " " + settled(question, most);
  }

  /** Which operation a question is about; many are asked of several. */
  private static String about(Question question, Review review) {
    return review.chapters().stream()
        .map(Chapter::subject)
        .filter(subject -> question.field().startsWith(subject + "/"))
        .max(java.util.Comparator.comparingInt(String::length))
        .map(subject -> subject + ": ")
        .orElse("");
  }

  private static String settled(Question question, int most) {
    if (question.settles().isEmpty()) {
      return "Needed, with others, for "
          + question.touches()
          + (question.touches() == 1 ? " verdict." : " verdicts.");
    }
    int more = Math.max(0, question.settles().size() - most);
    return "Settles "
        + question.settles().stream()
            .limit(most)
            .map(s -> s.title() + " (" + s.subject() + ", " + s.worst().word() + ")")
            .collect(Collectors.joining("; "))
        + (more == 0 ? "" : " and " + more + " more")
        + ".";
  }
}
