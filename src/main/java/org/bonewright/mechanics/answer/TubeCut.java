package org.bonewright.mechanics.answer;

/**
 * What a nail, or a bar of a fixator, carries at one level, about its own axis.
 *
 * @param z level in mm
 * @param axial N along it, tension positive
 * @param bendingX bending about x in N·mm
 * @param bendingY bending about y in N·mm
 * @param torque N·mm about its axis
 */
public record TubeCut(double z, double axial, double bendingX, double bendingY, double torque) {

  /** Return the bending in N·mm whichever way. */
  public double bending() {
    return Math.hypot(bendingX, bendingY);
  }

  /**
   * Return the bending in N·mm that stretches it on the side that faces a direction across the
   * bone.
   *
   * @param azimuth degrees around the bone, from x towards y
   */
  public double towards(double azimuth) {
    double angle = Math.toRadians(azimuth);
    return bendingX * Math.sin(angle) - bendingY * Math.cos(angle);
  }

  /** Return the difference of what two loads do at one level. */
  public TubeCut minus(TubeCut other) {
    return new TubeCut(
        z,
        axial - other.axial,
        bendingX - other.bendingX,
        bendingY - other.bendingY,
        torque - other.torque);
  }
}
