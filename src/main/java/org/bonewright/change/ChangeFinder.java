package org.bonewright.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;
import org.bonewright.shelf.Shelf;

/**
 * Finds changes to a plan that turn a verdict. Each way of each move that the card names is drawn
 * into the file, read and checked as any file is, and judged in full; what does not fit together is
 * dropped. Of each move the first way that turns the verdict is told. Only the plan is changed: no
 * fact, no operation of the past.
 */
public final class ChangeFinder {

  private final RuleSet rules;
  private final Options options;

  /**
   * Make a finder with these rules.
   *
   * @param shelf where new implants come from
   */
  public ChangeFinder(RuleSet rules, Shelf shelf) {
    this.rules = rules;
    this.options = new Options(shelf);
  }

  /**
   * Return the changes that turn an unmet or unknown verdict to met or not applicable, in the order
   * of the card's moves.
   *
   * @param file the case file as it was read without error
   * @param principle id of the principle
   * @param subject id of the plan or stage on which it is judged
   * @return nothing where the subject is no plan, or nothing that can be tried turns it
   */
  public List<PlanChange> changes(byte[] file, String principle, String subject) {
    Optional<Card> card = rules.card(principle);
    Optional<PlanInFile> drawn = PlanInFile.of(file, subject.replaceFirst("/.*", ""));
    if (card.isEmpty() || drawn.isEmpty()) {
      return List.of();
    }
    PlanInFile plan = drawn.get().alone();
    PlanJudge judge = new PlanJudge(rules);
    Place place = new Place(principle, subject);
    return judge
        .judged(plan)
        .filter(before -> before.standing(place).filter(s -> s.badness() > 0).isPresent())
        .map(before -> turning(plan, card.get(), place, judge, before))
        .orElse(List.of());
  }

  /** Return the names of the moves that can be tried out. */
  public static Set<String> moves() {
    return Options.names();
  }

  private List<PlanChange> turning(
      PlanInFile plan, Card card, Place place, PlanJudge judge, JudgedPlan before) {
    Differences differences = new Differences(judge::title);
    List<PlanChange> found = new ArrayList<>();
    for (String move : card.remedyMoves()) {
      Set<String> done = new HashSet<>();
      for (Option option : options.of(plan, move, place.subject())) {
        if (!done.contains(option.stage())) {
          judge
              .judged(option.file())
              .flatMap(after -> differences.change(option, place, before, after))
              .ifPresent(
                  change -> {
                    done.add(option.stage());
                    found.add(change);
                  });
        }
      }
    }
    return List.copyOf(found);
  }
}
