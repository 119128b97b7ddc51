package org.bonewright.review;

import java.util.List;

/**
 * What a plan must achieve, as the history teaches it, and whether it does.
 *
 * @param plan id of the plan
 * @param demands one for each principle that applies to the plan, or that an operation left unmet
 * @param decisive whether it is to be carried out: the chosen plan, or any where none is chosen
 * @param tensions what to weigh where two remedies for it pull against each other
 */
public record PlanDemands(
    String plan, boolean decisive, List<Demand> demands, List<String> tensions) {

  /**
   * One thing that the plan must achieve.
   *
   * @param statement the principle in one sentence
   * @param taughtBy the operations that left it unmet, in order; empty if the plan alone raises it
   * @param answer what the plan does about it
   */
  public record Demand(String statement, List<String> taughtBy, Line answer) {}
}
