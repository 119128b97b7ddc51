package org.bonewright.bench;

import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;
import org.bonewright.mechanics.section.Material;

/** A broken bone. */
record BenchBone(
    @Named("E") @Between(min = 0.001, max = 1e7) double young,
    @Named("nu") @Between(min = 0, max = 0.499) Optional<Double> poisson,
    @Named("G")
        @Meaning("shear modulus; absent it is E over 2 (1 + nu)")
        @Between(min = 0.001, max = 1e7)
        Optional<Double> shear,
    @Between(min = 0.1, max = 200) double outerDiameter,
    @Between(min = 0, max = 200) double innerDiameter,
    @Between(min = 0.1, max = 1000) double proximalLength,
    @Between(min = 0.1, max = 1000) double distalLength,
    @Between(min = 0.01, max = 1000) Optional<Double> shearStrength,
    @Meaning("at which screws crush it") @Between(min = 0.01, max = 1000)
        Optional<Double> compressiveStrength) {

  private static final double USUAL_POISSON = 0.3;

  /** Return the bone as a material. */
  Material material() {
    return material(young, poisson.orElse(USUAL_POISSON), shear);
  }

  /** Return a material whose shear modulus may have a value of its own. */
  static Material material(double young, double poisson, Optional<Double> shear) {
    return shear
        .map(own -> new Material(young, poisson, own))
        .orElseGet(() -> Material.isotropic(young, poisson));
  }
}
