package org.bonewright.mechanics.hold;

/**
 * What an empty hole leaves of the strength of a bone. Tests disagree, above all for small holes,
 * so that torsion is a range between two curves.
 *
 * <p>Upper curve: Edgerton et al., J Orthop Res 1990 (from memory): nothing lost up to a tenth of
 * the diameter, 0.66 left at 0.2, 0.22 at 0.6. Lower curve: 0.77 at 0.10 (Ho 2010, pig femur), 0.62
 * at 0.18 to 0.20 (McChesney 2022, composite tibia), then our line to the same end. Bending: 0.62
 * left at 0.2 (McBroom 1988), a straight line to there and on.
 */
public final class EmptyHole {

  private static final double[][] UPPER = {{0, 1}, {0.1, 1}, {0.2, 0.66}, {0.6, 0.22}};
  private static final double[][] LOWER = {
    {0, 1}, {0.1, 0.77}, {0.18, 0.62}, {0.2, 0.62}, {0.3, 0.5}, {0.6, 0.22}
  };
  private static final double[][] BENDING = {{0, 1}, {0.2, 0.62}, {0.6, 0.22}};

  private EmptyHole() {}

  /**
   * Return the largest share of the torsional strength that is left.
   *
   * @param ratio diameter of the hole over that of the bone, from 0; beyond 0.6 the last value
   *     holds
   */
  public static double torsionHigh(double ratio) {
    return along(UPPER, ratio);
  }

  /** Return the smallest share of the torsional strength that is left. */
  public static double torsionLow(double ratio) {
    return along(LOWER, ratio);
  }

  /** Return the share of the bending strength that is left. */
  public static double bending(double ratio) {
    return along(BENDING, ratio);
  }

  private static double along(double[][] curve, double at) {
    for (int i = 1; i < curve.length; i++) {
      if (at <= curve[i][0]) {
        double share = (at - curve[i - 1][0]) / (curve[i][0] - curve[i - 1][0]);
        return curve[i - 1][1] + share * (curve[i][1] - curve[i - 1][1]);
      }
    }
    return curve[curve.length - 1][1];
  }
}
