package org.bonewright.mechanics.section;

/**
 * What a beam gives more at one place than its section says.
 *
 * @param axial longer by so many mm for each N
 * @param torsion twisted by so many rad for each N·mm
 * @param weak bent away from the bone by so many rad for each N·mm
 * @param strong bent across the bone by so many rad for each N·mm
 */
public record Give(double axial, double torsion, double weak, double strong) {

  /** Return this share of it; two beams that meet at a hole take half each. */
  public Give share(double share) {
    return new Give(axial * share, torsion * share, weak * share, strong * share);
  }
}
