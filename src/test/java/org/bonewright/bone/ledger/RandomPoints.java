package org.bonewright.bone.ledger;

import java.util.List;
import java.util.SplittableRandom;

/**
 * The share of a screw's thread that old tracks leave, by throwing points into the thread. Shares
 * no geometry with the code under test: a track is two points on its axis, the distance of a point
 * from it is the height of a triangle.
 */
final class RandomPoints {

  static final int POINTS = 400_000;

  private final double outer;
  private final double wall;

  RandomPoints(double outer, double wall) {
    this.outer = outer;
    this.wall = wall;
  }

  /** Return the share left in the first or second cortex that the screw goes through. */
  double left(Drill screw, boolean near, List<Drill> older) {
    double[] in = entry(screw);
    double[] out = exit(screw);
    double[] along = unit(minus(out, in));
    double[] side = unit(cross(along, new double[] {0.3, 0.5, 0.8}));
    double[] other = cross(along, side);
    double whole = length(minus(out, in));
    double thread = whole * wall / outer;
    double from = near ? 0 : whole - thread;
    SplittableRandom random = new SplittableRandom(20_261_125);
    double r2 = screw.core() * screw.core() / 4;
    double major2 = screw.diameter().min() * screw.diameter().min() / 4;
    int free = 0;
    double[][] starts = older.stream().map(this::entry).toArray(double[][]::new);
    double[][] bases =
        older.stream().map(old -> minus(exit(old), entry(old))).toArray(double[][]::new);
    double[] radii2 =
        older.stream().mapToDouble(old -> Math.pow(old.diameter().min() / 2, 2)).toArray();
    for (int i = 0; i < POINTS; i++) {
      double s = from + thread * random.nextDouble();
      double radius = Math.sqrt(r2 + (major2 - r2) * random.nextDouble());
      double angle = 2 * Math.PI * random.nextDouble();
      double a = radius * Math.cos(angle);
      double b = radius * Math.sin(angle);
      double x = in[0] + s * along[0] + a * side[0] + b * other[0];
      double y = in[1] + s * along[1] + a * side[1] + b * other[1];
      double z = in[2] + s * along[2] + a * side[2] + b * other[2];
      boolean taken = false;
      for (int t = 0; t < starts.length && !taken; t++) {
        taken =
            height2(x - starts[t][0], y - starts[t][1], z - starts[t][2], bases[t]) <= radii2[t];
      }
      free += taken ? 0 : 1;
    }
    return free / (double) POINTS;
  }

  /** Twice the area of the triangle over its base, squared. */
  private static double height2(double x, double y, double z, double[] base) {
    double a = base[1] * z - base[2] * y;
    double b = base[2] * x - base[0] * z;
    double c = base[0] * y - base[1] * x;
    return (a * a + b * b + c * c) / (base[0] * base[0] + base[1] * base[1] + base[2] * base[2]);
  }

  private double[] entry(Drill drill) {
    double around = Math.toRadians(drill.direction().orElseThrow().degrees());
    return new double[] {
      outer / 2 * Math.cos(around), outer / 2 * Math.sin(around), drill.level().min()
    };
  }

  /** Through the middle of the bone and out on the other side, higher or lower by the tilt. */
  private double[] exit(Drill drill) {
    double[] in = entry(drill);
    double rise =
        outer * Math.sin(Math.toRadians(drill.tilt())) / Math.cos(Math.toRadians(drill.tilt()));
    return new double[] {-in[0], -in[1], in[2] + rise};
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double length(double[] a) {
    return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
  }

  private static double[] unit(double[] a) {
    double l = length(a);
    return new double[] {a[0] / l, a[1] / l, a[2] / l};
  }
}
