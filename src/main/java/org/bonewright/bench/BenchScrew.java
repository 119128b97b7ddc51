package org.bonewright.bench;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;
import org.bonewright.casefile.OneOrMany;

/** Screws of one kind. */
record BenchScrew(
    @Meaning("levels of their holes, or all") @OneOrMany(word = "all") List<Double> at,
    Type type,
    @Named("E") @Between(min = 0.001, max = 1e7) double young,
    @Named("nu") @Between(min = 0, max = 0.499) double poisson,
    @Between(min = 0.1, max = 30) double coreDiameter,
    @Between(min = 0.1, max = 30) Optional<Double> majorDiameter,
    @Between(min = 0.1, max = 30) Optional<Double> pitch,
    @Between(min = 1, max = 2) Optional<Integer> cortices,
    @Meaning("leave its bending out") Optional<Boolean> rigid,
    @Meaning("whether its head stiffens the plate") Optional<Boolean> stiffZone,
    @Meaning("pull of the screw on the plate") @Between(min = 0, max = 20_000)
        Optional<Double> preload,
    @Between(min = 0.1, max = 50) Optional<Double> patchRadius,
    @Between(min = 0, max = 2) Optional<Double> friction,
    @Meaning("index of its plate, from 0") @Between(min = 0, max = 20) Optional<Integer> plate) {

  /** How the head sits in the plate. */
  enum Type {
    LOCKING,
    @Named("nonLocking")
    NON_LOCKING
  }
}
