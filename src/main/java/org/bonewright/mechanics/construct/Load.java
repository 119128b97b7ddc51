package org.bonewright.mechanics.construct;

/**
 * A load, as its resultant at the level of the fracture, on the distal part.
 *
 * @param axial N along the bone, tension positive
 * @param shearX N towards the first plate
 * @param shearY N across
 * @param bendingX N·mm about x
 * @param bendingY N·mm about y; positive compresses the side of the first plate
 * @param torque N·mm about the bone
 */
public record Load(
    double axial, double shearX, double shearY, double bendingX, double bendingY, double torque) {

  /** Return a load along the bone only. */
  public static Load axial(double newton) {
    return new Load(newton, 0, 0, 0, 0, 0);
  }

  /** Return a bending moment about y only, in N·mm. */
  public static Load bendingY(double moment) {
    return new Load(0, 0, 0, 0, moment, 0);
  }

  /** Return a bending moment about x only, in N·mm. */
  public static Load bendingX(double moment) {
    return new Load(0, 0, 0, moment, 0, 0);
  }

  /** Return a torque only, in N·mm. */
  public static Load torque(double moment) {
    return new Load(0, 0, 0, 0, 0, moment);
  }

  /** Return this share of the load. */
  public Load times(double share) {
    return new Load(
        axial * share,
        shearX * share,
        shearY * share,
        bendingX * share,
        bendingY * share,
        torque * share);
  }

  /** Return the sum of its moments in N·mm, without sign, each force at an arm in mm. */
  public double size(double arm) {
    double force = Math.abs(axial) + Math.abs(shearX) + Math.abs(shearY);
    return force * arm + Math.abs(bendingX) + Math.abs(bendingY) + Math.abs(torque);
  }
}
