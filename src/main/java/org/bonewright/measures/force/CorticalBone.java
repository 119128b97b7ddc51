package org.bonewright.measures.force;

import java.util.Collection;
import org.bonewright.bone.BoneGrade;
import org.bonewright.bone.Dimension;
import org.bonewright.mechanics.section.Material;

/**
 * How stiff and strong cortical bone is, by one number: its modulus along the bone. Good bone 17
 * GPa (Reilly and Burstein 1975, from memory), reduced 14, poor 10 (scaled, our convention), each ±
 * 10 %. Shear modulus in proportion, 3.3 GPa in good bone (from memory). Shear strength along the
 * bone 52 MPa in good bone (51.6: Turner 2001, abstract read), 36 and 24 in reduced and poor bone
 * (scaled, our convention), straight lines between.
 *
 * @param young modulus in MPa
 */
record CorticalBone(double young) {

  private static final double POISSON = 0.3;
  private static final double SHEAR_SHARE = 3.3 / 17;
  private static final double GOOD = 17_000;
  private static final double REDUCED = 14_000;
  private static final double POOR = 10_000;
  private static final double SPREAD = 0.1;

  /** Return the range of moduli in MPa of bone that has one of these grades. */
  static Dimension moduli(Collection<BoneGrade> grades) {
    double min = grades.stream().mapToDouble(CorticalBone::usual).min().orElse(POOR);
    double max = grades.stream().mapToDouble(CorticalBone::usual).max().orElse(GOOD);
    return Dimension.assumed(min * (1 - SPREAD), max * (1 + SPREAD), "modulus by bone grade");
  }

  private static double usual(BoneGrade grade) {
    return switch (grade) {
      case GOOD -> GOOD;
      case REDUCED -> REDUCED;
      case POOR -> POOR;
    };
  }

  /** Return its elastic constants. */
  Material elastic() {
    return new Material(young, POISSON, young * SHEAR_SHARE);
  }

  /** Return its shear strength along the bone in MPa. */
  double shearStrength() {
    return young < REDUCED
        ? 24 + (young - POOR) * (36 - 24) / (REDUCED - POOR)
        : 36 + (young - REDUCED) * (52 - 36) / (GOOD - REDUCED);
  }
}
