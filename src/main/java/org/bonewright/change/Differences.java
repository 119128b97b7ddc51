package org.bonewright.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntPredicate;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/** What differs between two judgings of a plan. */
final class Differences {

  private static final PlanChange.Standing NOT_THERE =
      new PlanChange.Standing(VerdictKind.NOT_APPLICABLE, Severity.NOTE);

  private final Function<Place, String> titles;

  /**
   * Make it.
   *
   * @param titles gives the title of a principle
   */
  Differences(Function<Place, String> titles) {
    this.titles = titles;
  }

  /** Return an option as a change that turns a verdict, with all else that it turns; or nothing. */
  Optional<PlanChange> change(Option option, Place turned, JudgedPlan before, JudgedPlan after) {
    return after
        .standing(turned)
        .filter(standing -> standing.badness() == 0)
        .map(
            standing ->
                new PlanChange(
                    option.stage(),
                    option.move(),
                    option.words(),
                    standing.verdict(),
                    without(turned, better(before, after)),
                    without(turned, worse(before, after))));
  }

  private static List<PlanChange.Turned> without(Place place, List<PlanChange.Turned> all) {
    return all.stream()
        .filter(
            turned ->
                !(turned.principle().equals(place.principle())
                    && turned.subject().equals(place.subject())))
        .toList();
  }

  /** Return the verdicts that the second has better. */
  List<PlanChange.Turned> better(JudgedPlan before, JudgedPlan after) {
    return differing(before, after, by -> by < 0);
  }

  /** Return the verdicts that the second has worse. */
  List<PlanChange.Turned> worse(JudgedPlan before, JudgedPlan after) {
    return differing(before, after, by -> by > 0);
  }

  private List<PlanChange.Turned> differing(
      JudgedPlan before, JudgedPlan after, IntPredicate which) {
    List<PlanChange.Turned> differing = new ArrayList<>();
    after
        .found()
        .forEach(
            (place, found) -> {
              PlanChange.Standing was = before.standing(place).orElse(NOT_THERE);
              PlanChange.Standing is = found.standing();
              if (which.test(is.badness() - was.badness())) {
                differing.add(
                    new PlanChange.Turned(
                        place.principle(), titles.apply(place), place.subject(), was, is));
              }
            });
    return List.copyOf(differing);
  }
}
