package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.bonewright.bone.BoneShape;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Side;

/**
 * The bone seen from the side, near end left: where a point at a level, a direction and a distance
 * from the axis stands on the sheet. The projection is true: what lies on the surface that looks up
 * is seen edge-on, what faces the reader is seen in full.
 *
 * @param scale how levels stand on the sheet
 * @param middle y of the bone's axis
 * @param up the surface that looks up
 * @param side side of the body, which tells from where one looks
 * @param bone the bone as a tube
 * @param byLevel whether levels are those of the bone, so that it may be thicker at one than at
 *     another
 */
record Profile(
    Scale scale, double middle, Direction up, Side side, BoneShape bone, boolean byLevel) {

  Profile at(double newMiddle) {
    return new Profile(scale, newMiddle, up, side, bone, byLevel);
  }

  /** Return the surface that faces the reader: with the near end left it follows from the side. */
  Direction viewer() {
    double turn = side == Side.LEFT ? -90 : 90;
    return new Direction((up.degrees() + turn + 360) % 360);
  }

  /**
   * Return 1 for the surface that looks up, -1 for the one that looks down, 0 for those between.
   */
  double rise(Direction direction) {
    return Math.cos(Math.toRadians(direction.degrees() - up.degrees()));
  }

  /** Return 1 for the surface that faces the reader, -1 for the one behind. */
  double depth(Direction direction) {
    return Math.cos(Math.toRadians(direction.degrees() - viewer().degrees()));
  }

  double x(double level) {
    return scale.x(level);
  }

  /** Return y of a point {@code mm} above the axis. */
  double y(double mm) {
    return middle - scale.units(mm);
  }

  double radius(double level) {
    return (byLevel ? bone.outerAt(level) : bone.outerAtShaft()).middle() / 2;
  }

  double wall(double level) {
    return Math.min(radius(level), bone.cortexAt(level).middle());
  }

  /** Return levels from one to another, close enough for a smooth outline. */
  static List<Double> levels(double from, double to) {
    TreeSet<Double> levels = new TreeSet<>();
    int steps = (int) Math.max(1, Math.ceil((to - from) / 5));
    for (int i = 0; i <= steps; i++) {
      levels.add(from + (to - from) * i / steps);
    }
    return new ArrayList<>(levels);
  }
}
