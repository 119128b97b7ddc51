package org.bonewright.measures.plate;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Plate;

/** Two plates on one bone. */
final class PlatePair {

  private static final double LEAST_ANGLE = 60;
  private static final double MOST_ANGLE = 120;

  private PlatePair() {}

  /** Return the angle between two plates in degrees, where both surfaces are stated. */
  static Optional<Double> angle(Plate one, Plate other) {
    return one.surface().flatMap(a -> other.surface().map(a::angleTo));
  }

  /**
   * Return whether two of the plates, about at a right angle, do for this bone; both answers where
   * a surface is not stated.
   */
  static Set<Boolean> does(BoneName bone, List<Plate> plates) {
    Set<Boolean> answers = new TreeSet<>(Set.of(false));
    for (int i = 0; i < plates.size(); i++) {
      for (Plate other : plates.subList(i + 1, plates.size())) {
        if (suits(bone, plates.get(i)) && suits(bone, other)) {
          Optional<Double> angle = angle(plates.get(i), other);
          if (angle.isEmpty()) {
            answers.add(true);
          } else if (angle.get() >= LEAST_ANGLE && angle.get() <= MOST_ANGLE) {
            return Set.of(true);
          }
        }
      }
    }
    return answers;
  }

  private static boolean suits(BoneName bone, Plate plate) {
    return plate.family().map(family -> PlateFit.doesInPairs(bone, family)).orElse(false);
  }
}
