package org.bonewright.review;

import java.util.List;
import java.util.Optional;
import org.bonewright.principles.RuleTrace;

/**
 * Why a principle got its verdict on one operation, stage or plan, with all that a doubter needs to
 * check it.
 *
 * @param line the verdict, with what was read and where the principle comes from
 * @param family title of its family
 * @param statement the principle in one sentence
 * @param inputs what was read, with its formula and its origin, in the order of the line's readings
 * @param limits the limits that hold here, with what they cut and the evidence behind them
 * @param rules how each rule stands, in the order of its file
 * @param asks what is missing and matters, the first that would settle it alone first
 * @param dispute the other view of the literature, where there is one, whether or not it decided
 * @param awaiting open questions that a surgeon must answer before the principle is trusted
 * @param reviewedBy who has reviewed the principle
 * @param versions what judged it
 */
public record Explanation(
    Line line,
    String family,
    String statement,
    List<Input> inputs,
    List<HeldLimit> limits,
    List<RuleTrace> rules,
    List<String> asks,
    Optional<String> dispute,
    List<String> awaiting,
    String reviewedBy,
    Review.Versions versions) {

  /** Copies the lists. */
  public Explanation {
    inputs = List.copyOf(inputs);
    limits = List.copyOf(limits);
    rules = List.copyOf(rules);
    asks = List.copyOf(asks);
    awaiting = List.copyOf(awaiting);
  }

  /**
   * What was read.
   *
   * @param reading the value with its working
   * @param formula how the measure is defined
   * @param from the fields and measures that it uses
   * @param source where its definition comes from
   */
  public record Input(Line.Measured reading, String formula, List<String> from, String source) {}

  /**
   * A limit.
   *
   * @param name its name in the card
   * @param of title of the measure that it cuts
   * @param value the value here; a range where it hangs on what is not known
   * @param unit unit of the value, empty for a pure number
   * @param evidence the kind of evidence behind it
   */
  public record HeldLimit(String name, String of, String value, String unit, String evidence) {}
}
