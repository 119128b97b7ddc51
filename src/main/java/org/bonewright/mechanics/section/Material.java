package org.bonewright.mechanics.section;

/**
 * An elastic material.
 *
 * @param young modulus of elasticity along the bone in MPa, above zero
 * @param poisson Poisson's ratio, from 0 to below 0.5
 * @param shear shear modulus in MPa, above zero; for bone a value of its own, since bone is not the
 *     same in all directions
 */
public record Material(double young, double poisson, double shear) {

  /**
   * Refuses what no material can be.
   *
   * @throws IllegalArgumentException if a modulus is not above zero or Poisson's ratio is outside 0
   *     to 0.5
   */
  public Material {
    if (!(young > 0) || !(shear > 0) || !(poisson >= 0 && poisson < 0.5)) {
      throw new IllegalArgumentException("no material: " + young + ", " + poisson + ", " + shear);
    }
  }

  private static final double HARDENED = 1e4;

  /** Return a material so much stiffer that a part of it hardly gives: for checks. */
  public Material hardened() {
    return isotropic(young * HARDENED, poisson);
  }

  /** Return a material that is the same in all directions: its shear modulus follows. */
  public static Material isotropic(double young, double poisson) {
    return new Material(young, poisson, young / (2 * (1 + poisson)));
  }
}
