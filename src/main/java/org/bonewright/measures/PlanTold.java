package org.bonewright.measures;

import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Plan;

/** Whether a plan tells something at all; none for an operation of the past. */
public final class PlanTold implements Measure {

  private final Definition definition;
  private final Function<Plan, Optional<?>> field;
  private final String whenTold;
  private final String whenNot;

  /**
   * Make the measure.
   *
   * @param definition its definition, whose words are yes and no
   * @param field what the plan may tell
   * @param whenTold the working of yes
   * @param whenNot the working of no
   */
  public PlanTold(
      Definition definition, Function<Plan, Optional<?>> field, String whenTold, String whenNot) {
    this.definition = definition;
    this.field = field;
    this.whenTold = whenTold;
    this.whenNot = whenNot;
  }

  @Override
  public Definition definition() {
    return definition;
  }

  @Override
  public Reading take(Scene scene) {
    return scene
        .subject()
        .plan()
        .<Reading>map(
            plan ->
                field.apply(plan).isPresent()
                    ? Reading.word("yes", whenTold)
                    : Reading.word("no", whenNot))
        .orElseGet(() -> new Reading.None("not a plan"));
  }
}
