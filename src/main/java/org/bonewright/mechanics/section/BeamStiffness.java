package org.bonewright.mechanics.section;

/**
 * What a prismatic beam resists, for each mm of its length. An infinite value is a rigid part.
 *
 * @param axial EA in N
 * @param torsion GJ in N·mm²
 * @param weak EI in N·mm² for bending about the weak axis, that is, away from the bone
 * @param strong EI in N·mm² for bending about the strong axis
 * @param shearWeak κGA in N for shear in the plane of weak bending
 * @param shearStrong κGA in N for shear in the plane of strong bending
 */
public record BeamStiffness(
    double axial,
    double torsion,
    double weak,
    double strong,
    double shearWeak,
    double shearStrong) {

  /** A part that does not give at all. */
  public static final BeamStiffness RIGID =
      new BeamStiffness(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY);
}
