package org.bonewright.bench;

import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;

/** A lag screw across the fracture, beside the plates. */
record BenchLagScrew(
    @Meaning("degrees around the bone of the side from which it comes") Optional<Double> azimuth,
    @Meaning("where its head rests on one fragment") Place head,
    @Meaning("the middle of the cortex beyond the fracture that holds its thread") Place thread,
    @Named("E") @Between(min = 0.001, max = 1e7) double young,
    @Named("nu") @Between(min = 0, max = 0.499) double poisson,
    @Between(min = 0.1, max = 30) double coreDiameter,
    @Between(min = 0.1, max = 30) Optional<Double> majorDiameter,
    @Between(min = 0.1, max = 30) Optional<Double> pitch,
    @Meaning("with which it was tightened, in N") @Between(min = 0, max = 20_000)
        Optional<Double> preload,
    @Meaning("of the patch on which its head rests") @Between(min = 0.1, max = 50)
        Optional<Double> headRadius) {

  /** A place in the plane in which the screw lies. */
  record Place(
      @Meaning("level") double at,
      @Meaning("from the axis of the bone towards the azimuth; negative beyond it")
          @Between(min = -100, max = 100)
          double out) {}
}
