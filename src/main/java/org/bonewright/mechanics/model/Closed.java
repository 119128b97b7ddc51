package org.bonewright.mechanics.model;

import java.util.List;
import java.util.Optional;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Loads;
import org.bonewright.mechanics.frame.Six;

/**
 * A joined bone whose ends are held together all round, as by a spring that neither parts nor
 * slips; where a layer joins them, by that layer. It tells what the ends carry, from how they would
 * move without the spring.
 */
final class Closed {

  private static final int SIX = 6;

  private final Joined joined;
  private final Six springs;
  private final Optional<SmallCholesky> factor;

  private Closed(Joined joined, Six springs, Optional<SmallCholesky> factor) {
    this.joined = joined;
    this.springs = springs;
    this.factor = factor;
  }

  /** Close the ends of a bone. */
  static Closed of(FixedBone fixed, Joined joined) {
    if (fixed.fracture().filling() instanceof Filling.Layer) {
      return new Closed(joined, joined.ends().stiffness().diagonal(), Optional.empty());
    }
    Six springs =
        new BoneEnds(fixed.shaft().section(), fixed.shaft().material().young(), 0).closed();
    double[][] give = joined.frame().give(List.of(joined.ends()));
    for (int i = 0; i < SIX; i++) {
      for (int j = 0; j < SIX; j++) {
        give[i][j] *= Math.sqrt(springs.get(i) * springs.get(j));
      }
      give[i][i] += 1;
    }
    return new Closed(joined, springs, SmallCholesky.of(give));
  }

  /** Return the joined bone. */
  Joined joined() {
    return joined;
  }

  /**
   * Return how a point moves apart under a pair of forces at another, the ends being closed.
   *
   * @param at where the pair acts
   * @param pair the pair
   * @param point what moves
   */
  Six across(Link at, Six pair, Link point) {
    Loads loads = joined.frame().loads().pair(at, pair);
    if (factor.isPresent()) {
      Six carried = carried(joined.frame().loads().pair(at, pair));
      loads.pair(joined.ends(), carried.times(-1));
    }
    return joined.frame().under(loads).across(point);
  }

  /** Return what the ends carry under a load: six numbers, tension positive. */
  Six carried(Loads loads) {
    Six free = joined.frame().under(loads).across(joined.ends());
    double[] w = new double[SIX];
    for (int i = 0; i < SIX; i++) {
      w[i] = Math.sqrt(springs.get(i)) * free.get(i);
    }
    factor.ifPresent(known -> known.solve(w));
    for (int i = 0; i < SIX; i++) {
      w[i] *= Math.sqrt(springs.get(i));
    }
    return Six.of(w);
  }
}
