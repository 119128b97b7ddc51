package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything about a principle except its rule: what it says, what it needs, its limits, where it
 * comes from, and the words of its verdicts.
 *
 * @param id kebab-case id, the same as of its files
 * @param level 1, or 2 where it reads verdicts of others
 * @param subject what it is judged on
 * @param title a few words, for a table
 * @param statement the principle in one sentence
 * @param cause the factor under which findings with one cause are gathered
 * @param needs its inputs: the name in the rule, and the measure
 * @param limits its limits by name
 * @param grades the severities that its rule can give
 * @param highest the gravest severity that it can have, steps included; no grade is graver
 * @param verdicts the verdicts that it can give
 * @param overridable whether a surgeon may accept it unmet with a reason
 * @param why the mechanism
 * @param say the words of its verdicts
 * @param tells what its words tell beside the verdict, and its rule does not judge
 * @param remedy what would clear an unmet verdict
 * @param remedyMoves the kinds of change that this is, as words
 * @param sources where it comes from
 * @param disputed what the literature disagrees on, where it does
 * @param awaiting open questions that a surgeon must answer before it is trusted
 * @param reviewedBy who has reviewed it
 * @param since the first rule-set version that has it
 * @param formerIds ids it had before
 * @param deprecated why it is retired, where it is
 * @param siteMayNotChange why no site may change its limits or severities, where none may
 */
public record Card(
    String id,
    int level,
    SubjectKind subject,
    String title,
    String statement,
    String cause,
    Map<String, String> needs,
    Map<String, Limit> limits,
    List<Severity> grades,
    Severity highest,
    List<VerdictKind> verdicts,
    boolean overridable,
    String why,
    Say say,
    List<Told> tells,
    String remedy,
    List<String> remedyMoves,
    List<Source> sources,
    Optional<Dispute> disputed,
    List<String> awaiting,
    String reviewedBy,
    String since,
    List<String> formerIds,
    Optional<String> deprecated,
    Optional<String> siteMayNotChange) {

  /** What a principle is judged on. */
  public enum SubjectKind {
    /** Every operation, and every stage of a plan. */
    OPERATION,
    /** The plan as a whole, and every past operation that was itself a revision. */
    PLAN,
    /**
     * The case as it stands: each plan as a whole, or the last operation where there is no plan.
     */
    CASE
  }

  /**
   * A limit of one need.
   *
   * @param of the need that it cuts
   * @param by the needs, with words, by which it differs; empty for a single value
   * @param values the value for each combination of these words, joined by spaces; {@code
   *     otherwise} for the rest; a combination without a value has no limit
   * @param evidence the kind of evidence behind it
   */
  public record Limit(String of, List<String> by, Map<String, Double> values, String evidence) {

    /** The key of the value that holds where no other does. */
    public static final String OTHERWISE = "otherwise";

    /** Return the value for these words, NaN where there is none. */
    double resolve(Map<String, String> words) {
      return at(String.join(" ", by.stream().map(words::get).toList()));
    }

    /** Return the value for words joined by spaces in the order of {@code by}, NaN for none. */
    public double at(String joined) {
      Double value = values.get(by.isEmpty() ? OTHERWISE : joined);
      return value != null ? value : values.getOrDefault(OTHERWISE, Double.NaN);
    }
  }

  /** Return the same card with other limits. */
  Card with(Map<String, Limit> others) {
    return new Card(
        id,
        level,
        subject,
        title,
        statement,
        cause,
        needs,
        others,
        grades,
        highest,
        verdicts,
        overridable,
        why,
        say,
        tells,
        remedy,
        remedyMoves,
        sources,
        disputed,
        awaiting,
        reviewedBy,
        since,
        formerIds,
        deprecated,
        siteMayNotChange);
  }

  /**
   * The words of the verdicts. Needs in braces are filled with what was read, {@code {limit}} with
   * the limit that decided.
   *
   * @param met when it is met
   * @param unmet when it is unmet, by the limit that decided
   * @param notApplicable when it does not apply
   */
  public record Say(String met, Map<String, String> unmet, String notApplicable) {}

  /**
   * A sentence that is told beside a verdict, for its own sake: nothing hangs on it. It is left out
   * where there is nothing to read.
   *
   * @param of the measure that it tells
   * @param with the verdicts that it stands beside
   * @param say the sentence, with {@code {it}} for what was read
   */
  public record Told(String of, List<VerdictKind> with, String say) {}

  /**
   * Where a principle comes from.
   *
   * @param text author, place, year and what it says
   * @param read whether an abstract or excerpt was read; else it is cited from memory
   */
  public record Source(String text, boolean read) {

    /** Return it as it is shown: with the word that it was read, or comes from memory. */
    public String shown() {
      return text + (read ? " (excerpt read)" : " (from memory)");
    }
  }

  /**
   * A disagreement in the literature.
   *
   * @param limits the limits that it touches, which count as major at most
   * @param view the other view
   */
  public record Dispute(List<String> limits, String view) {}
}
