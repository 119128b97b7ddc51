package org.bonewright.bone;

import java.util.Optional;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;

/** The gap that a reduction left at the line. */
public final class GapLeft {

  private GapLeft() {}

  /**
   * Return the wider of the gaps on the two sides in mm; empty where neither is stated. One alone
   * says only how wide it is at least: the other may be as wide as any.
   */
  public static Optional<Dimension> widest(Reduction reduction) {
    Optional<Quantity> near = reduction.gapNearMm();
    Optional<Quantity> far = reduction.gapFarMm();
    if (near.isEmpty() && far.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Dimension(
            Math.max(least(near), least(far)),
            Math.max(most(near), most(far)),
            near.isEmpty() || far.isEmpty(),
            "gap stated"));
  }

  private static double least(Optional<Quantity> gap) {
    return gap.map(Quantity::min).orElse(0.0);
  }

  private static double most(Optional<Quantity> gap) {
    return gap.map(Quantity::max).orElse(Double.POSITIVE_INFINITY);
  }
}
