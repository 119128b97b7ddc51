package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far the edge of the nearest open plate hole keeps from the gap or unsupported line. */
final class OpenHoleClearance implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "open-hole-clearance",
        "Nearest open hole to the line",
        Definition.signedMillimetres(),
        "distance along the axis from the edge of the nearest hole without screw or plug to the"
            + " edge of the line, below zero where they overlap, by the width of the hole at most. The line is as wide as its gap; in"
            + " a zone that is not a simple line, as the zone. With no open hole: the plate length",
        List.of(
            "operations/fixation/place",
            "operations/fixation/screws",
            "gap-widest",
            "zone-length",
            "pattern-class"),
        "our convention; a hole is taken as wide as the usual screw of the plate");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> plate = scene.mainPlate();
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    PlacedPlate placed = plate.get();
    Plate recorded = placed.plate();
    String field = "fixation/" + recorded.id();
    if (recorded.screws().isEmpty() || recorded.holes().isEmpty() || placed.size().isEmpty()) {
      return Reading.unknown(
          scene.missing(
              field + "/screws",
              "What family is "
                  + recorded.id()
                  + ", how many holes has it, and which hold a"
                  + " screw?"));
    }
    List<Integer> open =
        placed
            .allHoles()
            .filter(h -> !placed.isFilled(h) && !recorded.plugged().contains(h))
            .boxed()
            .toList();
    if (open.isEmpty()) {
      double length = placed.length().map(Dimension::max).orElse(0.0);
      return Reading.number(length, "no open hole; the plate length counts");
    }
    MissingFact place =
        scene.missing(
            field + "/place",
            "Which two holes of "
                + recorded.id()
                + " lie either side of the zone, and how long is"
                + " the zone?");
    Optional<Dimension> line = halfLine(scene).map(half -> within(half, placed));
    if (line.isEmpty()) {
      return new Reading.Unknown(lineMissing(scene));
    }
    List<MissingFact> missing = new ArrayList<>();
    if (open.stream().flatMap(h -> placed.distance(h).stream()).anyMatch(d -> d.min() < d.max())) {
      missing.add(place);
    }
    missing.addAll(lineMissing(scene));
    return nearest(placed, open, line.get(), placed.size().get().screw() / 2)
        .map(found -> found.reading(missing))
        .orElseGet(() -> Reading.unknown(place));
  }

  /** Return what would make the width of the line exact. */
  private static List<MissingFact> lineMissing(Scene scene) {
    Reading pattern = scene.read("pattern-class");
    Reading gap = scene.read("gap-widest");
    Reading zone = scene.read("zone-length");
    if (scene.certainly("pattern-class", "simple")) {
      return gap.missing();
    }
    return scene.possibly("pattern-class", "simple")
        ? Reading.missingOf(pattern, gap, zone)
        : zone.missing();
  }

  private record Nearest(int hole, Dimension clearance) {
    Reading reading(List<MissingFact> missing) {
      return Reading.number(
          clearance, "hole " + hole + ", its place read off", missing.toArray(MissingFact[]::new));
    }
  }

  private static Optional<Nearest> nearest(
      PlacedPlate placed, List<Integer> open, Dimension halfLine, double radius) {
    List<Nearest> all = new ArrayList<>();
    for (int hole : open) {
      Optional<Dimension> distance = placed.distance(hole);
      if (distance.isEmpty()) {
        return Optional.empty();
      }
      all.add(new Nearest(hole, distance.get().magnitude().minus(halfLine).plus(-radius)));
    }
    double min = all.stream().mapToDouble(n -> n.clearance().min()).min().orElseThrow();
    double max = all.stream().mapToDouble(n -> n.clearance().max()).min().orElseThrow();
    return all.stream()
        .filter(n -> n.clearance().min() == min)
        .findFirst()
        .map(
            n ->
                new Nearest(
                    n.hole(),
                    new Dimension(
                        Math.max(min, -2 * radius),
                        Math.max(max, -2 * radius),
                        n.clearance().assumed(),
                        "")));
  }

  /** A gap without a known end still ends somewhere under the plate. */
  private static Dimension within(Dimension half, PlacedPlate placed) {
    double most = placed.length().map(Dimension::max).orElse(500.0);
    return new Dimension(
        Math.min(half.min(), most), Math.min(half.max(), most), half.assumed(), half.basis());
  }

  private static Optional<Dimension> halfLine(Scene scene) {
    if (scene.certainly("pattern-class", "simple")) {
      return half(scene, "gap-widest");
    }
    Optional<Dimension> zone = half(scene, "zone-length");
    return scene.possibly("pattern-class", "simple")
        ? zone.flatMap(a -> half(scene, "gap-widest").map(b -> either(a, b)))
        : zone;
  }

  private static Dimension either(Dimension a, Dimension b) {
    return new Dimension(
        Math.min(a.min(), b.min()),
        Math.max(a.max(), b.max()),
        a.assumed() || b.assumed(),
        a.basis() + " or " + b.basis());
  }

  private static Optional<Dimension> half(Scene scene, String width) {
    return scene.read(width) instanceof Reading.Amount n
        ? Optional.of(new Dimension(n.min() / 2, n.max() / 2, n.kind() == Kind.ASSUMED, width))
        : Optional.empty();
  }
}
