package org.bonewright.bone;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Section;

/**
 * One diameter of a bone where it was measured. Between two measured sections it is interpolated
 * linearly, bound by bound; beyond the last one it is that section's, ± 10 % and marked as assumed.
 *
 * @param what which diameter, in words
 * @param points where it was measured, in order of level
 */
record Measured(String what, List<Point> points) {

  private static final double LESS = 0.9;
  private static final double MORE = 1.1;

  /**
   * A measured diameter.
   *
   * @param level in mm
   * @param diameter in mm
   */
  record Point(double level, Quantity diameter) {}

  Measured {
    points = List.copyOf(points);
  }

  /** Return where a bone's file gives a diameter. */
  static Measured of(Bone bone, Function<Section, Optional<Quantity>> diameter, String what) {
    return new Measured(
        what,
        bone.sections().stream()
            .flatMap(
                section ->
                    diameter.apply(section).stream()
                        .map(stated -> new Point(section.atMm().middle(), stated)))
            .sorted(Comparator.comparingDouble(Point::level))
            .toList());
  }

  /**
   * Return the diameter in mm where the level is not known: from the narrowest measured section to
   * the widest, ± 10 %; empty where none was measured.
   */
  Optional<Dimension> anywhere() {
    if (points.isEmpty()) {
      return Optional.empty();
    }
    List<Quantity> all = points.stream().map(Point::diameter).toList();
    return Optional.of(
        Dimension.assumed(
            all.stream().mapToDouble(Quantity::min).min().orElseThrow() * LESS,
            all.stream().mapToDouble(Quantity::max).max().orElseThrow() * MORE,
            what + " of the measured sections ± 10 %"));
  }

  /** Return the diameter in mm at a level in mm; empty where none was measured. */
  Optional<Dimension> at(double level) {
    if (points.isEmpty()) {
      return Optional.empty();
    }
    Point before = points.get(0);
    for (Point point : points) {
      if (point.level() >= level) {
        return Optional.of(between(before, point, level));
      }
      before = point;
    }
    return Optional.of(beyond(before));
  }

  private Dimension between(Point before, Point after, double level) {
    if (before.level() >= level) {
      return before.level() == level
          ? Dimension.stated(before.diameter(), what + " as measured")
          : beyond(before);
    }
    double share = (level - before.level()) / (after.level() - before.level());
    Quantity a = before.diameter();
    Quantity b = after.diameter();
    return new Dimension(
        a.min() + share * (b.min() - a.min()),
        a.max() + share * (b.max() - a.max()),
        false,
        what + " between measured sections");
  }

  private Dimension beyond(Point last) {
    return Dimension.assumed(
        last.diameter().min() * LESS,
        last.diameter().max() * MORE,
        what + " of the nearest measured section ± 10 %");
  }
}
