package org.bonewright.mechanics.answer;

/**
 * What a nail carries at one level, about its own axis.
 *
 * @param z level in mm
 * @param axial N along the nail, tension positive
 * @param bendingX bending about x in N·mm
 * @param bendingY bending about y in N·mm
 * @param torque N·mm about the nail
 */
public record NailCut(double z, double axial, double bendingX, double bendingY, double torque) {

  /** Return the bending in N·mm whichever way. */
  public double bending() {
    return Math.hypot(bendingX, bendingY);
  }

  /**
   * Return the bending in N·mm that stretches the nail on the side that faces a direction across
   * the bone.
   *
   * @param azimuth degrees around the bone, from x towards y
   */
  public double towards(double azimuth) {
    double angle = Math.toRadians(azimuth);
    return bendingX * Math.sin(angle) - bendingY * Math.cos(angle);
  }

  /** Return the difference of what two loads do at one level. */
  public NailCut minus(NailCut other) {
    return new NailCut(
        z,
        axial - other.axial,
        bendingX - other.bendingX,
        bendingY - other.bendingY,
        torque - other.torque);
  }
}
