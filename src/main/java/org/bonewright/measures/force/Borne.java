package org.bonewright.measures.force;

import java.util.Optional;
import org.bonewright.mechanics.answer.GapMovement;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.model.MechanicalModel;
import org.bonewright.mechanics.model.Outcome;

/**
 * What a construct does under as much of a load as it bears.
 *
 * @param answer to that share of the load
 * @param share of the load that it bears; 1 for all of it, less where plates slip off
 */
record Borne(LoadAnswer answer, double share) {

  private static final int HALVINGS = 6;

  /**
   * Raise a load as far as it is borne.
   *
   * @return empty if the model has no answer even without a load
   */
  static Optional<Borne> of(MechanicalModel model, Load load) {
    Optional<LoadAnswer> all = answer(model, load);
    if (all.isPresent()) {
      return all.map(answer -> new Borne(answer, answer.reached()));
    }
    double low = 0;
    double high = 1;
    Optional<LoadAnswer> best = answer(model, load.times(0));
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      Optional<LoadAnswer> there = answer(model, load.times(middle));
      if (there.filter(answer -> answer.reached() >= 1).isPresent()) {
        low = middle;
        best = there;
      } else {
        high = middle;
      }
    }
    double borne = low;
    return best.map(answer -> new Borne(answer, borne));
  }

  /** Return the answer to a load that is borne as a whole. */
  static Optional<LoadAnswer> answer(MechanicalModel model, Load load) {
    return model.under(load) instanceof Outcome.Answered answered
        ? Optional.of(answered.answer())
        : Optional.empty();
  }

  /**
   * Return whether the line moves too far for a bone that is held: the fragments pivot about a
   * screw, or slide off each other. The model knows small movements only.
   *
   * @param radius of the bone in mm; as far as this no line moves that is held (our convention)
   */
  boolean parts(double radius) {
    GapMovement gap = answer.gap();
    return Math.max(Math.abs(gap.min()), Math.abs(gap.max())) >= radius || gap.shear() >= radius;
  }

  /** Return whether the whole load is borne. */
  boolean whole() {
    return share >= 1;
  }
}
