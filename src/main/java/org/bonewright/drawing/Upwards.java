package org.bonewright.drawing;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Plate;
import org.bonewright.drawing.words.Standing;

/**
 * Which surface looks up in the side strip: that of the longest plate of the subject, else of the
 * longest plate there is, else the one at which most bolts, pins and screws enter, else most of the
 * old tracks; lateral where nothing tells.
 */
final class Upwards {

  private Upwards() {}

  static Direction of(Standing standing) {
    return told(standing).orElse(Direction.Named.LATERAL.direction());
  }

  /** Return the surface that the file makes look up; empty where it tells of none. */
  static Optional<Direction> told(Standing standing) {
    return plate(standing, laid -> laid.metal().own())
        .or(() -> plate(standing, laid -> true))
        .or(() -> track(standing, Standing.Drilled::own))
        .or(() -> track(standing, drilled -> drilled.old().filled()))
        .or(() -> track(standing, drilled -> true));
  }

  private static Optional<Direction> plate(Standing standing, Predicate<Standing.Laid> which) {
    return standing.plates().stream()
        .filter(which)
        .filter(laid -> laid.placed().plate().surface().isPresent())
        .max(
            Comparator.comparingDouble(
                laid -> laid.placed().length().map(Dimension::middle).orElse(0.0)))
        .map(Standing.Laid::placed)
        .map(placed -> placed.plate())
        .flatMap(Plate::surface);
  }

  private static Optional<Direction> track(Standing standing, Predicate<Standing.Drilled> which) {
    Map<Direction, Integer> counts = new LinkedHashMap<>();
    standing.tracks().stream()
        .filter(which)
        .flatMap(drilled -> drilled.old().track().direction().stream())
        .forEach(direction -> counts.merge(direction, 1, Integer::sum));
    Optional<Direction> best = Optional.empty();
    for (Map.Entry<Direction, Integer> entry : counts.entrySet()) {
      if (best.isEmpty() || entry.getValue() > counts.getOrDefault(best.get(), 0)) {
        best = Optional.of(entry.getKey());
      }
    }
    return best;
  }
}
