package org.bonewright.measures.plate;

import org.bonewright.bone.Dimension;
import org.bonewright.measures.Scene;

/**
 * A plate and another implant along the bone: the gap between them, or how far they overlap.
 *
 * @param plate the plate's ends, as levels
 * @param riser the other implant
 */
record EndToEnd(PlateEnds plate, Riser riser) {

  /** Return whether they certainly lie apart. */
  boolean apart() {
    return gap().min() > 0;
  }

  /** Return whether they certainly overlap or touch. */
  boolean overlap() {
    return gap().max() <= 0;
  }

  /** Return whether the other implant certainly lies under the plate with both its ends. */
  boolean covered() {
    return riser.from().min() >= plate.near().max() && riser.to().max() <= plate.far().min();
  }

  /** Return gap or overlap in diameters of the bone at the plate's end. */
  Dimension inDiameters(Scene scene) {
    Dimension gap = gap().notBelowZero();
    Dimension overlap = overlapped().notBelowZero();
    Dimension distance = apart() ? gap : overlap() ? overlap : gap.or(overlap);
    return distance.over(outer(scene));
  }

  private Dimension beyondPlate() {
    return riser.from().minus(plate.far());
  }

  private Dimension beforePlate() {
    return plate.near().minus(riser.to());
  }

  private Dimension gap() {
    return beyondPlate().atLeast(beforePlate());
  }

  /** An implant covered by the plate is as safe as its end nearer to an end of the plate. */
  private Dimension overlapped() {
    Dimension shared = atMost(plate.far(), riser.to()).minus(plate.near().atLeast(riser.from()));
    Dimension toEnds = atMost(riser.from().minus(plate.near()), plate.far().minus(riser.to()));
    boolean reachesOut =
        riser.from().max() < plate.near().min() || riser.to().min() > plate.far().max();
    return covered() ? toEnds : reachesOut ? shared : shared.or(toEnds);
  }

  private Dimension outer(Scene scene) {
    if (apart()) {
      return scene.bone().outerAt(beyondPlate().min() > 0 ? plate.far() : plate.near());
    }
    return scene.bone().outerAt(plate.near()).or(scene.bone().outerAt(plate.far()));
  }

  private static Dimension atMost(Dimension one, Dimension other) {
    return new Dimension(
        Math.min(one.min(), other.min()),
        Math.min(one.max(), other.max()),
        one.assumed() || other.assumed(),
        "");
  }
}
