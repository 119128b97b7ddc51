package org.bonewright.principles;

import java.util.List;
import java.util.Optional;

/**
 * How one rule of a principle stands to one subject.
 *
 * @param name its name
 * @param finds the severity and the words of what it finds; empty where it says that the principle
 *     applies
 * @param fires whether it fires, in every, in some or in none of the ways in which the inputs may
 *     fall
 * @param conditions each of which must hold
 */
public record RuleTrace(
    String name, Optional<Finds> finds, Holds fires, List<ConditionTrace> conditions) {

  /** Copies the list. */
  public RuleTrace {
    conditions = List.copyOf(conditions);
  }

  /**
   * What a rule finds unmet.
   *
   * @param severity the grade before any step
   * @param limit the limit, or the condition, that decides
   */
  public record Finds(Severity severity, String limit) {}

  /**
   * A condition.
   *
   * @param words in words
   * @param holds whether it holds
   */
  public record ConditionTrace(String words, Holds holds) {}

  /** In how many of the ways in which the inputs may fall something is true. */
  public enum Holds {
    /** In every one. */
    ALWAYS,
    /** In some: it hangs on what is not known, or on what a model samples. */
    SOMETIMES,
    /** In none. */
    NEVER
  }
}
