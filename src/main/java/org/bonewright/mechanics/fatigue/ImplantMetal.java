package org.bonewright.mechanics.fatigue;

import org.bonewright.mechanics.section.Material;

/**
 * The metals of implants. Smallest strengths after the standards named, as seen in secondary tables
 * or from memory; endurance limits from memory, as a range with a usual value.
 */
public enum ImplantMetal {
  /** ISO 5832-1, ASTM F138, annealed. */
  STEEL_ANNEALED(193_000, 0.30, 190, 490, 180, 215, 250),
  /** ISO 5832-1, ASTM F138, cold worked. */
  STEEL_COLD_WORKED(193_000, 0.30, 690, 860, 300, 300, 400),
  /** ISO 5832-2, ASTM F67, grade 4, annealed. */
  TITANIUM_GRADE_4(103_000, 0.34, 483, 550, 250, 250, 300),
  /** ISO 5832-3, ASTM F136: titanium with 6 % aluminium and 4 % vanadium. */
  TITANIUM_ALLOY(110_000, 0.34, 780, 860, 450, 450, 550);

  private final double young;
  private final double poisson;
  private final double yield;
  private final double strength;
  private final double enduranceLow;
  private final double endurance;
  private final double enduranceHigh;

  ImplantMetal(
      double young,
      double poisson,
      double yield,
      double strength,
      double enduranceLow,
      double endurance,
      double enduranceHigh) {
    this.young = young;
    this.poisson = poisson;
    this.yield = yield;
    this.strength = strength;
    this.enduranceLow = enduranceLow;
    this.endurance = endurance;
    this.enduranceHigh = enduranceHigh;
  }

  /** Return its elastic constants. */
  public Material elastic() {
    return Material.isotropic(young, poisson);
  }

  /** Return the smallest stress in MPa that leaves 0.2 % behind. */
  public double yieldStress() {
    return yield;
  }

  /** Return the smallest tensile strength in MPa. */
  public double strength() {
    return strength;
  }

  /** Return the lowest endurance limit told of it, in MPa: smooth, 10⁷ cycles, fully reversed. */
  public double enduranceLow() {
    return enduranceLow;
  }

  /** Return the usual endurance limit in MPa. */
  public double endurance() {
    return endurance;
  }

  /** Return the highest endurance limit told of it, in MPa. */
  public double enduranceHigh() {
    return enduranceHigh;
  }
}
