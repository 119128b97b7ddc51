package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.drawing.words.Standing;

/**
 * From where to where the bone is drawn.
 *
 * @param from level of its near end, or of where the drawing begins, mm
 * @param to level of its far end, or of where the drawing ends
 * @param whole whether these are the ends of the bone
 * @param farEnd the far end as a range, where it is one
 */
record Extent(double from, double to, boolean whole, Optional<Dimension> farEnd) {

  private static final double ROOM = 25;

  static Extent of(Standing standing) {
    List<Double> levels = levels(standing);
    double least = levels.stream().mapToDouble(l -> l).min().orElse(-50);
    double most = levels.stream().mapToDouble(l -> l).max().orElse(50);
    if (!standing.levels().fromLandmark()) {
      return new Extent(least - ROOM, most + ROOM, false, Optional.empty());
    }
    double near = standing.nearEnd();
    Dimension end = standing.farEnd();
    return new Extent(
        Math.min(near, least),
        Math.max(end.middle(), most),
        true,
        end.max() - end.min() > 1 ? Optional.of(end) : Optional.empty());
  }

  private static List<Double> levels(Standing standing) {
    List<Double> levels = new ArrayList<>();
    standing.tracks().stream()
        .flatMap(drilled -> drilled.old().track().level().stream())
        .forEach(level -> levels.add(level.middle()));
    standing.plates().stream()
        .flatMap(laid -> new PlateForm(standing, laid).span().stream())
        .forEach(
            span -> {
              levels.add(span.from());
              levels.add(span.to());
            });
    FractureZone zone = standing.zone();
    zone.centre()
        .ifPresent(
            centre -> {
              double half = zone.length().map(l -> l.max() / 2).orElse(0.0);
              levels.add(centre.min() - half);
              levels.add(centre.max() + half);
            });
    return levels;
  }
}
