package org.bonewright.measures.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The length along the axis that a plate has to span. */
final class ZoneLength implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "zone-length",
        "Zone length",
        Definition.millimetres(),
        "length of the broken or ununited zone along the axis after what the operation resects; for"
            + " a simple pattern, and where nothing is left of it, at least the outer diameter of the"
            + " shaft. Not stated: for a"
            + " transverse line the outer diameter, for an oblique one outer diameter times the"
            + " tangent of its angle, as far as it fits between the plate holes either side of it;"
            + " else what fits between these",
        List.of(
            "findings/zone",
            "injury/zone",
            "operations/resection",
            "injury/obliquityDeg",
            "bone/sections",
            "operations/fixation/place"),
        "the floor by the shaft diameter is our convention, so that ratios do not blow up");
  }

  @Override
  public Reading take(Scene scene) {
    FractureZone zone = scene.zone();
    Dimension outer = scene.bone().outerAt(zone);
    MissingFact missing =
        scene.missingInCase(
            "injury/zone", "From which level to which is the bone broken or not united, in mm?");
    Optional<Dimension> length = zone.length().or(() -> notStated(scene, outer));
    if (length.isEmpty()) {
      return Reading.unknown(missing);
    }
    Dimension found = withGapLeft(scene, length.get());
    // Nothing left of the zone: two cut ends meet, which is a simple line.
    boolean certainlySimple = scene.certainly("pattern-class", "simple") || found.max() <= 0;
    if (!certainlySimple && !scene.possibly("pattern-class", "simple")) {
      return Reading.number(found, found.basis(), missing);
    }
    Dimension floored = found.atLeast(outer);
    if (!certainlySimple) {
      return eitherWay(scene, found, floored, missing);
    }
    String working =
        floored.equals(found)
            ? found.basis()
            : found.numbers()
                + " mm along the axis, counted as at least the outer diameter of "
                + outer.numbers()
                + " mm";
    List<MissingFact> ask = new ArrayList<>();
    if (found.min() < found.max()) {
      ask.add(missing);
    }
    if (outer.min() < outer.max() && outer.max() > found.min()) {
      ask.add(
          scene.missingInCase(
              "bone/sections", "What is the outer diameter of the bone at the zone, in mm?"));
    }
    return Reading.number(floored, working, ask.toArray(MissingFact[]::new));
  }

  /** Return the range from the zone as it is to the zone as a simple pattern would count. */
  private static Reading eitherWay(
      Scene scene, Dimension found, Dimension floored, MissingFact missing) {
    List<MissingFact> all = new ArrayList<>(scene.read("pattern-class").missing());
    if (found.assumed() || found.min() < found.max()) {
      all.add(missing);
    }
    return Reading.number(
        new Dimension(found.min(), floored.max(), found.assumed() || floored.assumed(), ""),
        found.numbers() + " mm along the axis, or more if the pattern was simple",
        all.stream().distinct().toArray(MissingFact[]::new));
  }

  /** Once bone is cut out, what is left to span is at least the gap between the ends. */
  private static Dimension withGapLeft(Scene scene, Dimension length) {
    boolean resected = scene.operation().resection().map(cut -> !cut.isEmpty()).orElse(false);
    if (!resected) {
      return length;
    }
    double most = longest(scene);
    Dimension least =
        scene.read("gap-widest") instanceof Reading.Amount gap
            ? new Dimension(Math.min(gap.min(), most), Math.min(gap.max(), most), true, "gap left")
            : Dimension.assumed(0, most, "gap left not stated");
    return length.atLeast(least);
  }

  private static double longest(Scene scene) {
    return scene.operation().resection().stream()
        .flatMap(List::stream)
        .mapToDouble(cut -> Math.max(0, cut.toMm().max() - cut.fromMm().min()))
        .sum();
  }

  /** Return what the line across the shaft and the holes either side of it leave possible. */
  private static Optional<Dimension> notStated(Scene scene, Dimension outer) {
    Optional<Dimension> room = scene.mainPlate().flatMap(PlacedPlate::roomForZone);
    Optional<Dimension> across = fromAngle(scene, outer);
    if (across.isEmpty() || room.isEmpty() || isTransverse(scene)) {
      return across.or(() -> room);
    }
    double min = Math.max(across.get().min(), room.get().min());
    double max = Math.min(across.get().max(), room.get().max());
    // Where the two disagree, what the film of the plate shows counts.
    return min <= max
        ? Optional.of(Dimension.assumed(min, max, across.get().basis() + "; " + room.get().basis()))
        : room;
  }

  private static boolean isTransverse(Scene scene) {
    return StatedPattern.of(scene).equals(Optional.of(Injury.Pattern.TRANSVERSE));
  }

  private static Optional<Dimension> fromAngle(Scene scene, Dimension outer) {
    if (isTransverse(scene)) {
      return Optional.of(outer.because("transverse line: the outer diameter counts"));
    }
    Optional<Quantity> angle = scene.subject().caseFile().injury().obliquityDeg();
    boolean oblique = StatedPattern.of(scene).equals(Optional.of(Injury.Pattern.OBLIQUE));
    if (!oblique || angle.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Dimension.assumed(
            outer.min() * Math.tan(Math.toRadians(Math.min(80, angle.get().min()))),
            outer.max() * Math.tan(Math.toRadians(Math.min(80, angle.get().max()))),
            "oblique line across the shaft"));
  }
}
