package org.bonewright.review;

import java.util.List;
import org.bonewright.principles.Severity;

/**
 * Something to find out.
 *
 * @param field where the answer belongs in the case file
 * @param question the question
 * @param settles what the answer alone would settle, the worst first
 * @param touches how many further verdicts it would help to settle
 */
public record Question(String field, String question, List<Settled> settles, int touches) {

  /**
   * A verdict that an answer alone would settle.
   *
   * @param principle id of the principle
   * @param title its title
   * @param subject id of the subject
   * @param worst the worst severity that it may have
   */
  public record Settled(String principle, String title, String subject, Severity worst) {}
}
