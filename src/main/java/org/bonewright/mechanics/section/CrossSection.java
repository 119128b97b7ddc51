package org.bonewright.mechanics.section;

/**
 * A cross-section of a straight part. The <em>weak</em> axis is the one about which a plate bends
 * when it is bent away from the bone; a circle has no weak axis and gives the same for both.
 */
public sealed interface CrossSection permits HollowCircle, Rectangle {

  /** Return the area in mm². */
  double area();

  /** Return the second moment of area about the weak axis in mm⁴. */
  double weak();

  /** Return the second moment of area about the strong axis in mm⁴. */
  double strong();

  /** Return the torsion constant in mm⁴. */
  double torsion();

  /**
   * Return the share of the area that carries shear in a Timoshenko beam, after Cowper, J Appl Mech
   * 1966 (from memory).
   *
   * @param poisson Poisson's ratio of the material
   */
  double shearShare(double poisson);

  /** Return what a beam of this section resists for each mm of its length. */
  default BeamStiffness of(Material material) {
    double shear = shearShare(material.poisson()) * material.shear() * area();
    return new BeamStiffness(
        material.young() * area(),
        material.shear() * torsion(),
        material.young() * weak(),
        material.young() * strong(),
        shear,
        shear);
  }
}
