package org.bonewright.change;

import java.util.List;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/**
 * A change to the plan that turns a verdict, judged in full.
 *
 * @param stage id of the plan and stage that it changes
 * @param move name of the move in the cards
 * @param words what is done, without a full stop
 * @param becomes the verdict that it turns to
 * @param better what else it turns for the better
 * @param worse what else it turns for the worse
 */
public record PlanChange(
    String stage,
    String move,
    String words,
    VerdictKind becomes,
    List<Turned> better,
    List<Turned> worse) {

  /** Copies the lists. */
  public PlanChange {
    better = List.copyOf(better);
    worse = List.copyOf(worse);
  }

  /**
   * A verdict that a change turns.
   *
   * @param principle id of the principle
   * @param title its title
   * @param subject id of the plan or stage
   * @param from the verdict as planned, with its severity
   * @param to the verdict with the change, with its severity
   */
  public record Turned(
      String principle, String title, String subject, Standing from, Standing to) {}

  /**
   * A verdict and how grave it is.
   *
   * @param verdict the verdict
   * @param grave how grave where unmet, or at worst where unknown; note otherwise
   */
  public record Standing(VerdictKind verdict, Severity grave) {

    /** Return how bad it is: higher is worse, equal is as bad. */
    int badness() {
      return switch (verdict) {
        case MET, NOT_APPLICABLE -> 0;
        case UNKNOWN -> 1 + 2 * rank();
        case UNMET -> 2 + 2 * rank();
      };
    }

    private int rank() {
      return switch (grave) {
        case NOTE -> 0;
        case MINOR -> 1;
        case MAJOR -> 2;
        case CRITICAL -> 3;
      };
    }

    /** Return it in words. */
    public String inWords() {
      return switch (verdict) {
        case MET, NOT_APPLICABLE -> verdict.word().replace('-', ' ');
        case UNMET -> "unmet, " + grave.word();
        case UNKNOWN -> "unknown, at worst " + grave.word();
      };
    }
  }
}
