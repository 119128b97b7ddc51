package org.bonewright.measures.force;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Material;
import org.bonewright.mechanics.fatigue.Goodman;
import org.bonewright.mechanics.fatigue.ImplantMetal;

/**
 * The metal of an implant, with its endurance limit as a range. High-nitrogen steel and
 * cobalt-chromium are taken as cold-worked steel, unalloyed titanium as grade 4. A metal that is
 * not told lies anywhere between titanium alloy and steel in stiffness, and has the endurance
 * limits of both together.
 *
 * @param young modulus in MPa, a range where the metal is not told
 * @param poisson Poisson's ratio
 * @param endurance smooth limit in MPa at 10⁷ cycles
 * @param strength smallest tensile strength in MPa
 * @param told whether the file tells it
 */
record Metal(Dimension young, double poisson, Dimension endurance, double strength, boolean told) {

  private static final double POISSON = 0.32;

  static Metal of(Optional<Material> stated) {
    return stated.map(Metal::of).orElseGet(Metal::unknown);
  }

  private static Metal of(Material material) {
    return of(
        switch (material) {
          case STEEL_ANNEALED -> ImplantMetal.STEEL_ANNEALED;
          case STEEL_COLD_WORKED, STEEL_HIGH_NITROGEN, COBALT_CHROMIUM ->
              ImplantMetal.STEEL_COLD_WORKED;
          case TITANIUM_UNALLOYED -> ImplantMetal.TITANIUM_GRADE_4;
          case TITANIUM_ALLOY -> ImplantMetal.TITANIUM_ALLOY;
        });
  }

  private static Metal of(ImplantMetal metal) {
    double young = metal.elastic().young();
    return new Metal(
        new Dimension(young, young, false, "metal stated"),
        metal.elastic().poisson(),
        Dimension.assumed(metal.enduranceLow(), metal.enduranceHigh(), "endurance limit"),
        metal.strength(),
        true);
  }

  private static Metal unknown() {
    Metal steel = of(ImplantMetal.STEEL_COLD_WORKED);
    Metal titanium = of(ImplantMetal.TITANIUM_ALLOY);
    return new Metal(
        Dimension.assumed(titanium.young.min(), steel.young.max(), "metal not told"),
        POISSON,
        Dimension.assumed(steel.endurance.min(), titanium.endurance.max(), "metal not told"),
        Math.min(steel.strength, titanium.strength),
        false);
  }

  /** Return its elastic constants under a set of assumptions. */
  org.bonewright.mechanics.section.Material elastic(Draw draw) {
    return org.bonewright.mechanics.section.Material.isotropic(
        draw.in(young, Assumption.PLATE), poisson);
  }

  /** Return what it bears in fatigue under a set of assumptions. */
  Goodman fatigue(Draw draw) {
    return new Goodman(draw.in(endurance, Assumption.METAL), strength);
  }
}
