package org.bonewright.measures.hold;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.measures.Scene;

/** Where along the bone a plate screw lies, and how thick the bone is there. */
final class ScrewLevel {

  private ScrewLevel() {}

  /** Return how far a hole lies outside the zone in mm, 0 within it, where that can be told. */
  static Optional<Dimension> clearOfZone(Scene scene, PlacedPlate plate, int hole) {
    return plate
        .distance(hole)
        .flatMap(distance -> scene.zone().length().map(length -> clear(distance, length)));
  }

  private static Dimension clear(Dimension distance, Dimension length) {
    double most = Math.max(Math.abs(distance.min()), Math.abs(distance.max()));
    double least = Math.max(0, Math.max(distance.min(), -distance.max()));
    return new Dimension(
        Math.max(0, least - length.max() / 2),
        Math.max(0, most - length.min() / 2),
        distance.assumed() || length.assumed(),
        "");
  }

  /** Return the outer diameter over every level that the screw may have, in mm. */
  static Dimension outerAt(Scene scene, Dimension level) {
    List<Dimension> widths =
        DoubleStream.concat(
                DoubleStream.of(level.min(), level.max()),
                scene.subject().caseFile().bone().sections().stream()
                    .mapToDouble(section -> section.atMm().middle())
                    .filter(at -> at > level.min() && at < level.max()))
            .mapToObj(scene.bone()::outerAt)
            .toList();
    return new Dimension(
        widths.stream().mapToDouble(Dimension::min).min().orElseThrow(),
        widths.stream().mapToDouble(Dimension::max).max().orElseThrow(),
        widths.stream().anyMatch(Dimension::assumed),
        "outer diameter at the screw");
  }
}
