package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.bonewright.casefile.Direction;

/**
 * The outer surface rolled out flat: level across, direction down, both to the same scale for one
 * diameter. It is slit between anteromedial and anterior, so that no named surface lies on the
 * slit; what reaches over it is drawn at both edges.
 *
 * @param scale how levels stand on the sheet
 * @param top y of the upper edge
 * @param outer outer diameter in mm for which it is to scale around the bone
 */
record Unrolled(Scale scale, double top, double outer) {

  private static final double SLIT = 337.5;

  double height() {
    return scale.units(Math.PI * outer);
  }

  double bottom() {
    return top + height();
  }

  double y(Direction direction) {
    return top + (direction.degrees() - SLIT + 360) % 360 / 360 * height();
  }

  double x(double level) {
    return scale.x(level);
  }

  /**
   * Return marks about a height, and again at the other edge where they reach over the slit.
   *
   * @param reach how far they reach up and down, in units
   */
  List<Mark> around(double y, double reach, DoubleFunction<List<Mark>> marks) {
    List<Mark> all = new ArrayList<>(marks.apply(y));
    if (y - reach < top) {
      all.addAll(marks.apply(y + height()));
    }
    if (y + reach > bottom()) {
      all.addAll(marks.apply(y - height()));
    }
    return all;
  }

  /** Return how far one height lies below another, the short way round. */
  double down(double from, double to) {
    return Math.IEEEremainder(to - from, height());
  }
}
