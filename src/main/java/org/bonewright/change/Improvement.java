package org.bonewright.change;

import java.util.List;
import java.util.Optional;
import org.bonewright.principles.Severity;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a walk by single moves made of a drawn plan: options to discuss, never orders.
 *
 * @param reference the case's own reference
 * @param invented whether the case is made up
 * @param plan id of the plan
 * @param outcome whether a plan was found that leaves nothing critical or major unmet
 * @param infection what is to be said of infection before all else
 * @param shortness what is known of shorter paths to such a plan; empty where none was found
 * @param steps the moves, in order; where no such plan was found, those that lead as far as it goes
 * @param before what the plan costs as drawn
 * @param after what it costs with the steps
 * @param unmet what stays critical or major and unmet after the steps
 * @param milder titles of what stays unmet and is minor or a note
 * @param toFindOut what stays unknown and may be critical or major, the gravest first
 * @param judged so many plans were judged
 * @param most so many were to be judged at the most
 * @param shelf name of the shelf that new implants come from
 * @param notKept plates and nails of the plan with the steps that a site's shelf does not have
 * @param drawn the plan with the steps, as a case file holds it
 */
public record Improvement(
    String reference,
    boolean invented,
    String plan,
    Outcome outcome,
    Infection infection,
    Optional<Shortness> shortness,
    List<Step> steps,
    Price before,
    Price after,
    List<Stays> unmet,
    List<String> milder,
    List<ToFindOut> toFindOut,
    int judged,
    int most,
    String shelf,
    List<String> notKept,
    ObjectNode drawn) {

  /** Copies the lists and the plan. */
  public Improvement {
    steps = List.copyOf(steps);
    unmet = List.copyOf(unmet);
    milder = List.copyOf(milder);
    toFindOut = List.copyOf(toFindOut);
    notKept = List.copyOf(notKept);
    drawn = drawn.deepCopy();
  }

  @Override
  public ObjectNode drawn() {
    return drawn.deepCopy();
  }

  /** What is to be said of infection before all else. */
  public enum Infection {
    /** Nothing that stays open concerns it. */
    NOT_AT_ISSUE,
    /** It must be treated or looked for first, and no step does that. */
    COMES_FIRST,
    /** It is proven, and a step draws the plan in two stages. */
    DRAWN_IN_STAGES
  }

  /** Whether a plan was found. */
  public enum Outcome {
    /** The plan as drawn leaves nothing critical or major unmet. */
    NOTHING_NEEDED,
    /** The steps lead to such a plan. */
    FOUND,
    /**
     * Proven infection is left untreated and no plan against it can be drawn: no step was looked
     * for.
     */
    INFECTION_FIRST,
    /** None was found. */
    NONE;

    /** Return whether nothing critical or major is left unmet. */
    public boolean isEnough() {
      return this == NOTHING_NEEDED || this == FOUND;
    }
  }

  /** What is known of shorter paths by the same moves. */
  public enum Shortness {
    /** Every path of fewer moves was tried: none leads to such a plan. */
    NONE_SHORTER,
    /** Not all of them were tried. */
    SHORTER_MAY_EXIST
  }

  /**
   * One move.
   *
   * @param stage id of the plan and stage that it changes; of the plan where it changes that
   * @param move name of the move in the cards
   * @param words what is done, without a full stop
   * @param principle id of the principle that it is for
   * @param title its title
   * @param better verdicts that it turns for the better
   * @param worse verdicts that it turns for the worse
   */
  public record Step(
      String stage,
      String move,
      String words,
      String principle,
      String title,
      List<PlanChange.Turned> better,
      List<PlanChange.Turned> worse) {

    /** Copies the lists. */
    public Step {
      better = List.copyOf(better);
      worse = List.copyOf(worse);
    }
  }

  /**
   * What stays unmet, and why.
   *
   * @param principle id of the principle
   * @param title its title
   * @param subject id of the plan or stage
   * @param standing the verdict and how grave it is
   * @param found what was found
   * @param why why no move closes it
   * @param remedy what the card says would clear it
   */
  public record Stays(
      String principle,
      String title,
      String subject,
      PlanChange.Standing standing,
      String found,
      String why,
      String remedy) {}

  /**
   * Something to find out.
   *
   * @param question the question; where a model's samples are split, what they say
   * @param worst the worst severity that a verdict may have for lack of it
   * @param titles titles of the principles that wait for it
   * @param canBeAnswered false where no fact, but the samples of a model leave it open
   */
  public record ToFindOut(
      String question, Severity worst, List<String> titles, boolean canBeAnswered) {

    /** Copies the titles. */
    public ToFindOut {
      titles = List.copyOf(titles);
    }
  }
}
