package org.bonewright.mechanics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * The rigid-plastic limit of a row by turns of the plate (an upper bound that is reached) against
 * the same by forces in the screws (a lower bound that is reached), a linear programme for a solver
 * that knows nothing of screws.
 */
class GroupLimitTest {

  @Property(tries = 300)
  void the_smallest_work_of_a_turn_is_the_largest_pull_in_balance(
      @ForAll @IntRange(min = 1, max = 9) int screws,
      @ForAll @DoubleRange(min = -80, max = 240) double load,
      @ForAll long seed) {
    Random random = new Random(seed);
    List<Double> at = new ArrayList<>();
    List<Double> capacity = new ArrayList<>();
    for (int i = 0; i < screws; i++) {
      at.add(18.0 * i + random.nextDouble(-4, 4));
      capacity.add(random.nextDouble(100, 3000));
    }
    double pull = simplex(at, capacity, load);
    assertThat(new HoldOut(at, capacity).group(load)).isCloseTo(pull, within(1e-6 * (1 + pull)));
  }

  @Property(tries = 100)
  void a_pull_on_a_screw_itself_is_no_exception(
      @ForAll @IntRange(min = 1, max = 9) int screws, @ForAll long seed) {
    Random random = new Random(seed);
    List<Double> at = new ArrayList<>();
    List<Double> capacity = new ArrayList<>();
    for (int i = 0; i < screws; i++) {
      at.add(18.0 * i);
      capacity.add(random.nextDouble(100, 3000));
    }
    double load = at.get(random.nextInt(screws));
    double pull = simplex(at, capacity, load);
    assertThat(new HoldOut(at, capacity).group(load)).isCloseTo(pull, within(1e-6 * (1 + pull)));
  }

  /** Largest P with forces F of at most the capacity either way that balance it at its place. */
  private static double simplex(List<Double> at, List<Double> capacity, double load) {
    int screws = at.size();
    // Variables: F + capacity of each screw, so that none is below zero, and P.
    double[] sum = new double[screws + 1];
    double[] moment = new double[screws + 1];
    double allPlastic = 0;
    double theirMoment = 0;
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int i = 0; i < screws; i++) {
      sum[i] = 1;
      moment[i] = at.get(i) - load;
      allPlastic += capacity.get(i);
      theirMoment += capacity.get(i) * moment[i];
      double[] one = new double[screws + 1];
      one[i] = 1;
      constraints.add(new LinearConstraint(one, Relationship.LEQ, 2 * capacity.get(i)));
    }
    sum[screws] = -1;
    constraints.add(new LinearConstraint(sum, Relationship.EQ, allPlastic));
    constraints.add(new LinearConstraint(moment, Relationship.EQ, theirMoment));
    double[] pull = new double[screws + 1];
    pull[screws] = 1;
    return new SimplexSolver()
        .optimize(
            new LinearObjectiveFunction(pull, 0),
            new LinearConstraintSet(constraints),
            GoalType.MAXIMIZE,
            new NonNegativeConstraint(true))
        .getValue();
  }
}
