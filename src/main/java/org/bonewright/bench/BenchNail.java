package org.bonewright.bench;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;
import org.bonewright.casefile.OneOrMany;

/** A nail on the axis of the bone. */
record BenchNail(
    @Named("E") @Between(min = 0.001, max = 1e7) double young,
    @Named("nu") @Between(min = 0, max = 0.499) double poisson,
    @Between(min = 0.1, max = 50) double outerDiameter,
    @Between(min = 0, max = 50) double innerDiameter,
    @OneOrMany List<Bolts> bolts,
    @Meaning("where the canal may hold it; empty where it lies free") List<Rest> rests) {

  /** Bolts of one kind. */
  record Bolts(
      List<Double> at,
      @Between(min = 0.1, max = 30) double diameter,
      @Meaning("degrees around the bone") Optional<Double> azimuth,
      @Named("E") @Meaning("of the nail if absent") @Between(min = 0.001, max = 1e7)
          Optional<Double> young,
      @Named("nu") @Between(min = 0, max = 0.499) Optional<Double> poisson,
      Optional<Boolean> rigid,
      Optional<Boolean> angleStable,
      @Meaning("in a slot along the nail") Optional<Boolean> slides) {}

  /** A level at which the nail comes to lie against the wall of the canal. */
  record Rest(
      double at,
      @Meaning("how far it moves sideways before it touches, in mm") @Between(min = 0, max = 10)
          double slack) {}
}
