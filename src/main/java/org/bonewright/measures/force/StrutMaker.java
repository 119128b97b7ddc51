package org.bonewright.measures.force;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Strut;

/** Makes the sketch of a strut in the canal. Sizes not told are those of a fibula, from memory. */
final class StrutMaker {

  private static final Dimension OUTER = Dimension.assumed(9, 13, "usual fibula");
  private static final Dimension WALL = Dimension.assumed(2, 3.5, "usual fibula");

  private StrutMaker() {}

  /** Return the strut; empty where it does not certainly cross the line. */
  static Optional<StrutSketch> of(Strut strut, Dimension centre) {
    Dimension from = stated(strut.fromMm()).minus(centre);
    Dimension to = stated(strut.toMm()).minus(centre);
    if (from.max() > -1 || to.min() < 1) {
      return Optional.empty();
    }
    return Optional.of(
        new StrutSketch(
            from,
            to,
            strut.outerMm().map(StrutMaker::stated).orElse(OUTER),
            strut.wallMm().map(StrutMaker::stated).orElse(WALL)));
  }

  private static Dimension stated(Quantity quantity) {
    return Dimension.stated(quantity, "stated");
  }
}
