package org.bonewright.bench;

import java.util.Optional;
import org.bonewright.casefile.Named;
import org.bonewright.mechanics.construct.Load;

/** A load: what is absent is 0. */
record BenchLoad(
    @Named("N") Optional<Double> axial,
    @Named("Vx") Optional<Double> shearX,
    @Named("Vy") Optional<Double> shearY,
    @Named("Mx") Optional<Double> bendingX,
    @Named("My") Optional<Double> bendingY,
    @Named("T") Optional<Double> torque) {

  /** Return the load. */
  Load load() {
    return new Load(
        axial.orElse(0.0),
        shearX.orElse(0.0),
        shearY.orElse(0.0),
        bendingX.orElse(0.0),
        bendingY.orElse(0.0),
        torque.orElse(0.0));
  }
}
