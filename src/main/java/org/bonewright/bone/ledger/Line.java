package org.bonewright.bone.ledger;

import java.util.Optional;
import org.bonewright.casefile.Direction;

/**
 * The axis of a screw in the bone's own frame: x towards anterior, y towards lateral, z along the
 * bone away from its landmark, in mm; the bone's axis is x = y = 0.
 *
 * @param x x of a point on the axis
 * @param y y of it
 * @param z z of it
 * @param dx x of the unit vector along the axis, from the near cortex inwards
 * @param dy y of it
 * @param dz z of it
 */
public record Line(double x, double y, double z, double dx, double dy, double dz) {

  /**
   * Return the axis of a screw that is aimed at the middle of the bone.
   *
   * @param level z of its entry in the near cortex, mm
   * @param direction where the entry lies around the bone
   * @param tilt tilt along the bone in degrees, positive when the tip points away from the landmark
   * @param outer outer diameter of the bone, mm
   */
  static Line into(double level, Direction direction, double tilt, double outer) {
    double around = Math.toRadians(direction.degrees());
    double along = Math.toRadians(tilt);
    return new Line(
        outer / 2 * Math.cos(around),
        outer / 2 * Math.sin(around),
        level,
        -Math.cos(around) * Math.cos(along),
        -Math.sin(around) * Math.cos(along),
        Math.sin(along));
  }

  /** Return the point {@code s} mm along the axis. */
  double[] at(double s) {
    return new double[] {x + s * dx, y + s * dy, z + s * dz};
  }

  /** Return the distance in mm of a point from the axis, squared. */
  double squaredDistance(double px, double py, double pz) {
    double rx = px - x;
    double ry = py - y;
    double rz = pz - z;
    double along = rx * dx + ry * dy + rz * dz;
    double ox = rx - along * dx;
    double oy = ry - along * dy;
    double oz = rz - along * dz;
    return ox * ox + oy * oy + oz * oz;
  }

  /** Return the distance in mm of two parallel axes; nothing where they are not parallel. */
  Optional<Double> parallelDistance(Line other) {
    double cosine = dx * other.dx + dy * other.dy + dz * other.dz;
    return Math.abs(cosine) < 1 - 1e-12
        ? Optional.empty()
        : Optional.of(Math.sqrt(squaredDistance(other.x, other.y, other.z)));
  }
}
