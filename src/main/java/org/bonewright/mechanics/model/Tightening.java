package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;

/**
 * Tightens lag screws: finds how hard each would pull if nothing moved, so that all of them
 * together pull as hard as is wanted once the ends, closed all round, have given way under them.
 */
final class Tightening {

  private Tightening() {}

  /** Return the bone with its lag screws tightened; empty if something is without resistance. */
  static Optional<Joined> of(FixedBone fixed, Joined joined) {
    List<LagColumn> lags = joined.lags();
    if (lags.stream().allMatch(lag -> lag.screw().force() <= 0)) {
      return Optional.of(joined);
    }
    Closed closed = Closed.of(fixed, joined);
    int many = lags.size();
    double[] roots = new double[many];
    double[] pulls = new double[many];
    double[][] matrix = new double[many][many];
    for (int i = 0; i < many; i++) {
      Link head = lags.get(i).head().link();
      roots[i] = Math.sqrt(head.stiffness().get(0, 0));
      pulls[i] = lags.get(i).screw().force() / roots[i];
      for (int j = 0; j <= i; j++) {
        double give = closed.across(lags.get(j).head().link(), Six.unit(0), head).along();
        matrix[i][j] = (i == j ? 1 : 0) - roots[i] * give * roots[j];
      }
    }
    return SmallCholesky.of(matrix)
        .map(
            factor -> {
              factor.solve(pulls);
              List<Joined.Spot> spots = new ArrayList<>(joined.spots());
              for (int i = 0; i < many; i++) {
                Joined.Spot head = lags.get(i).head();
                Stand tight = LagStand.tight(lags.get(i).screw().force(), roots[i] * pulls[i]);
                spots.set(
                    spots.size() - many + i,
                    new Joined.Spot(head.screw(), head.at(), head.link(), tight));
              }
              return joined.with(spots);
            });
  }
}
