package org.bonewright.measures.graft;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Where a strut lies with regard to the zone that it bridges. Once bone is cut out, the zone is at
 * least the gap left between the ends. Levels are mm from the landmark.
 *
 * @param from level of the near edge of the zone
 * @param to level of its far edge
 */
record StrutReach(Dimension from, Dimension to) {

  /** Return the zone that a strut bridges; empty where its place is not known. */
  static Optional<StrutReach> of(Scene scene) {
    FractureZone zone = scene.zone();
    return zone.centre()
        .flatMap(
            centre ->
                zone.length()
                    .map(length -> withGap(scene, length))
                    .map(
                        length ->
                            new StrutReach(centre.minus(half(length)), centre.plus(half(length)))));
  }

  private static Dimension withGap(Scene scene, Dimension length) {
    double cut =
        scene.subject().steps().stream()
            .map(Operation::resection)
            .flatMap(Optional::stream)
            .flatMap(List::stream)
            .mapToDouble(r -> Math.max(0, r.toMm().max() - r.fromMm().min()))
            .sum();
    if (cut <= 0) {
      return length;
    }
    Dimension left =
        scene.read("gap-widest") instanceof Reading.Amount gap
            ? new Dimension(
                gap.min(), Math.max(gap.min(), Math.min(gap.max(), cut)), false, "gap left")
            : Dimension.assumed(0, cut, "gap left not stated");
    return length.atLeast(left);
  }

  private static Dimension half(Dimension whole) {
    return new Dimension(whole.min() / 2, whole.max() / 2, whole.assumed(), whole.basis());
  }

  /** Return by how much a strut reaches beyond the zone on the shorter side, in mm. */
  static Reading beyond(Scene scene, Strut strut) {
    Optional<StrutReach> zone = of(scene);
    if (zone.isEmpty()) {
      return Reading.unknown(
          scene.missingInCase(
              "injury/zone", "From which level to which is the bone broken or not united, in mm?"));
    }
    Dimension near = zone.get().from().minus(Dimension.stated(strut.fromMm(), "strut stated"));
    Dimension far = Dimension.stated(strut.toMm(), "strut stated").minus(zone.get().to());
    Dimension shorter =
        new Dimension(
            Math.min(near.min(), far.min()),
            Math.min(near.max(), far.max()),
            near.assumed() || far.assumed(),
            "");
    return Reading.number(
        shorter,
        strut.id() + ": near " + near.numbers() + " mm, far " + far.numbers() + " mm",
        scene.missing(
            "fixation/" + strut.id(),
            "From which level to which does the strut run, and the zone, in mm?"));
  }

  /** Return whether a level is certainly (or else possibly) nearer than the zone. */
  boolean isNear(Dimension level, boolean certainly) {
    return certainly ? level.max() <= from.min() : level.min() <= from.max();
  }

  /** Return whether a level is certainly (or else possibly) farther than the zone. */
  boolean isFar(Dimension level, boolean certainly) {
    return certainly ? level.min() >= to.max() : level.max() >= to.min();
  }

  /** Return whether a level is certainly (or else possibly) within a strut. */
  static boolean within(Strut strut, Dimension level, boolean certainly) {
    return certainly
        ? level.min() >= strut.fromMm().max() && level.max() <= strut.toMm().min()
        : level.max() >= strut.fromMm().min() && level.min() <= strut.toMm().max();
  }
}
