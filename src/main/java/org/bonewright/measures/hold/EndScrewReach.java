package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/** How far beyond the zone a stiff end screw lies. */
final class EndScrewReach implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "end-screw-reach",
        "Stiff end screw to the zone, in bone diameters",
        Definition.ratio(),
        "distance along the axis from the edge of the zone to the outermost screw at an end of a"
            + " locking plate, where that screw is locked straight or holds in one cortex, divided by"
            + " the outer diameter of the bone there; the shorter end counts",
        List.of("plate-end-screw", "operations/fixation/place", "injury/zone", "bone/sections"),
        "common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.plates().isEmpty()) {
      return Plates.noPlate(scene);
    }
    if (scene.plates().stream().anyMatch(plate -> plate.plate().screws().isEmpty())) {
      return Reading.unknown(asked(scene));
    }
    List<EndScrew> stiff =
        EndScrew.all(scene).stream().filter(end -> end.stiff() != Certainty.NO).toList();
    if (stiff.isEmpty()) {
      return new Reading.None("no stiff screw at a plate end");
    }
    return shortest(scene, stiff);
  }

  private static Reading shortest(Scene scene, List<EndScrew> stiff) {
    List<String> parts = new ArrayList<>();
    double min = Double.POSITIVE_INFINITY;
    double surely = Double.POSITIVE_INFINITY;
    double most = 0;
    boolean assumed = false;
    for (EndScrew end : stiff) {
      Optional<Dimension> reach = end.reach(scene);
      if (reach.isEmpty()) {
        return Reading.unknown(asked(scene));
      }
      parts.add("hole " + end.hole() + ": " + reach.get().numbers());
      assumed |= reach.get().assumed();
      min = Math.min(min, reach.get().min());
      most = Math.max(most, reach.get().max());
      if (end.stiff() == Certainty.YES) {
        surely = Math.min(surely, reach.get().max());
      }
    }
    double max = Double.isInfinite(surely) ? most : surely;
    return new Reading.Amount(
        min,
        max,
        assumed ? Kind.ASSUMED : Kind.FACT,
        String.join(", ", parts),
        min < max ? List.of(asked(scene)) : List.of());
  }

  private static MissingFact asked(Scene scene) {
    return scene.missing(
        "fixation/" + scene.plates().get(0).plate().id() + "/place",
        "At which levels do the plate's last screws lie, and how wide is the bone there?");
  }
}
