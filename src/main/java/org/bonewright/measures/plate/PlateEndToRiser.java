package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far plate ends keep from the ends of other metal in the bone, or overlap with it. */
final class PlateEndToRiser implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-end-to-riser",
        "Plate end to other metal, in diameters",
        Definition.ratio(),
        "for the longest plate and each other implant, nail or plate apart from it: the gap between"
            + " them along the bone, or the length by which they overlap, divided by the outer"
            + " diameter at the plate's end; the smallest counts. An implant that lies under the"
            + " plate with both ends counts by the end nearer to an end of the plate. A nail is taken"
            + " as sunk 0 to 30 mm; a second plate beside the first is left to the principle on two"
            + " plates",
        List.of(
            "bone/otherImplants",
            "bone/sections",
            "operations/fixation/place",
            "operations/fixation/entry",
            "operations/fixation/lengthMm"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.mainPlate().isEmpty()) {
      return Plates.noPlate(scene);
    }
    Optional<List<EndToEnd>> pairs = pairs(scene);
    List<MissingFact> missing = Riser.missing(scene, scene.plates());
    if (pairs.isEmpty()) {
      return new Reading.Unknown(missing);
    }
    if (pairs.get().isEmpty()) {
      return new Reading.None("no other implant in the bone");
    }
    List<Dimension> all = pairs.get().stream().map(pair -> pair.inDiameters(scene)).toList();
    double min = all.stream().mapToDouble(Dimension::min).min().orElseThrow();
    double max = all.stream().mapToDouble(Dimension::max).min().orElseThrow();
    return new Reading.Amount(
        min,
        max,
        all.stream().anyMatch(Dimension::assumed) ? Kind.ASSUMED : Kind.FACT,
        String.join(", ", pairs.get().stream().map(pair -> pair.riser().what()).toList()),
        min == max ? List.of() : missing);
  }

  /**
   * Return the longest plate with each other implant; empty where one cannot be placed, or where
   * there may be more than are told.
   */
  static Optional<List<EndToEnd>> pairs(Scene scene) {
    if (!scene.construct().known()) {
      return Optional.empty();
    }
    List<PlacedPlate> plates = scene.plates();
    List<PlacedPlate> others = plates.subList(1, plates.size());
    Optional<List<Riser>> risers = Riser.of(scene, others);
    if (risers.isPresent() && risers.get().isEmpty()) {
      return Optional.of(List.of());
    }
    Optional<PlateEnds> ends = PlateEnds.levels(plates.get(0));
    if (risers.isEmpty() || ends.isEmpty()) {
      return Optional.empty();
    }
    List<EndToEnd> pairs = new ArrayList<>();
    int metal = risers.get().size() - others.size(); // plates stand last
    for (int i = 0; i < risers.get().size(); i++) {
      EndToEnd pair = new EndToEnd(ends.get(), risers.get().get(i));
      if (i < metal || pair.apart()) {
        pairs.add(pair);
      }
    }
    return Optional.of(pairs);
  }
}
