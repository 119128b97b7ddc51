package org.bonewright.measures.nail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Counts, distances and diameters of the bolts of a nail. */
final class BoltNumber implements Measure {

  /** What is measured. */
  enum What {
    /** Bolts at the end that has fewer. */
    FEWER_END,
    /** Fracture to the nearest bolt. */
    TO_FRACTURE,
    /** The thinnest bolt. */
    DIAMETER
  }

  private final What what;

  BoltNumber(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return switch (what) {
      case FEWER_END ->
          new Definition(
              "bolts-fewer-end",
              "Bolts at the end with fewer",
              Definition.count(1),
              "bolts counted for each end of the nail; the smaller count. Where the record gives the"
                  + " number and not the bolts, that number",
              List.of("operations/fixation/bolts", "operations/fixation/fewestBolts"),
              "bookkeeping");
      case TO_FRACTURE ->
          new Definition(
              "bolt-to-fracture",
              "Fracture to the nearest bolt",
              Definition.millimetres(),
              "distance along the axis from the edge of the zone to the nearest bolt; zero for a"
                  + " bolt inside the zone",
              List.of("operations/fixation/bolts/atMm", "injury/zone", "findings/zone"),
              "Bucholz et al., JBJS Am 1987, for its meaning");
      case DIAMETER ->
          new Definition(
              "bolt-diameter",
              "Thinnest bolt",
              Definition.millimetres(),
              "the smallest bolt diameter stated",
              List.of("operations/fixation/bolts/diameterMm"),
              "the case file");
    };
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Nail> nail = Nails.nail(scene);
    if (nail.isEmpty()) {
      return Nails.noNail(scene);
    }
    MissingFact missing = Nails.boltsMissing(scene, nail.get());
    if (nail.get().bolts().isEmpty()) {
      return what == What.FEWER_END ? byNumber(nail.get(), missing) : Reading.unknown(missing);
    }
    List<Bolt> bolts = nail.get().bolts().get();
    return switch (what) {
      case FEWER_END -> fewerEnd(bolts);
      case TO_FRACTURE -> toFracture(scene, bolts, missing);
      case DIAMETER -> diameter(bolts, missing);
    };
  }

  private static Reading byNumber(Nail nail, MissingFact missing) {
    return nail.fewestBolts()
        .map(
            fewest ->
                Reading.number(
                    new Dimension(fewest.min(), fewest.max(), false, ""),
                    "as the record has it for the end with fewer",
                    missing))
        .orElseGet(() -> Reading.unknown(missing));
  }

  private static Reading fewerEnd(List<Bolt> bolts) {
    int near = (int) bolts.stream().filter(bolt -> bolt.end() == Bolt.End.NEAR).count();
    int far = bolts.size() - near;
    return Reading.number(
        Math.min(near, far), near + " at the near end, " + far + " at the far end");
  }

  private static Reading toFracture(Scene scene, List<Bolt> bolts, MissingFact missing) {
    if (bolts.isEmpty()) {
      return new Reading.None("no bolt");
    }
    FractureZone zone = scene.zone();
    MissingFact zoneMissing =
        scene.missingInCase(
            "injury/zone", "From which level to which is the bone broken or not united, in mm?");
    if (zone.centre().isEmpty() || zone.length().isEmpty()) {
      return Reading.unknown(zoneMissing);
    }
    List<Dimension> distances = new ArrayList<>();
    for (Bolt bolt : bolts) {
      if (bolt.atMm().isEmpty()) {
        return Reading.unknown(missing);
      }
      distances.add(clear(bolt.atMm().get(), zone));
    }
    double min = distances.stream().mapToDouble(Dimension::min).min().orElseThrow();
    double max = distances.stream().mapToDouble(Dimension::max).min().orElseThrow();
    Dimension nearest = new Dimension(min, max, false, "");
    return Reading.number(
        nearest, "nearest bolt " + nearest.numbers() + " mm from the zone", missing, zoneMissing);
  }

  private static Dimension clear(Quantity at, FractureZone zone) {
    Dimension centre = zone.centre().orElseThrow();
    Dimension half = zone.length().orElseThrow();
    double nearest = Math.max(0, Math.max(at.min() - centre.max(), centre.min() - at.max()));
    double farthest =
        Math.max(Math.abs(at.max() - centre.min()), Math.abs(at.min() - centre.max()));
    return new Dimension(
        Math.max(0, nearest - half.max() / 2), Math.max(0, farthest - half.min() / 2), false, "");
  }

  private static Reading diameter(List<Bolt> bolts, MissingFact missing) {
    List<Quantity> stated = bolts.stream().flatMap(bolt -> bolt.diameterMm().stream()).toList();
    if (bolts.isEmpty()) {
      return new Reading.None("no bolt");
    }
    if (stated.size() < bolts.size()) {
      return Reading.unknown(missing);
    }
    Dimension thinnest =
        new Dimension(
            stated.stream().mapToDouble(Quantity::min).min().orElseThrow(),
            stated.stream().mapToDouble(Quantity::max).min().orElseThrow(),
            false,
            "");
    return Reading.number(thinnest, "thinnest bolt " + thinnest.numbers() + " mm", missing);
  }
}
