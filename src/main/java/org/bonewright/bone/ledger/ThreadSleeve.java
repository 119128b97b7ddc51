package org.bonewright.bone.ledger;

import java.util.List;

/**
 * The thread of a screw within one cortex: the ring between core and outer diameter, as long as the
 * cortex is thick along the screw.
 *
 * @param axis axis of the screw
 * @param from where along the axis the cortex begins, mm
 * @param length length within the cortex, mm
 * @param core core diameter, mm
 * @param major outer diameter, mm
 */
public record ThreadSleeve(Line axis, double from, double length, double core, double major) {

  private static final Grid FULL = new Grid(24, 96, 16);
  private static final Grid ROUGH = new Grid(8, 40, 6);

  /** How finely the thread is cut up. */
  private record Grid(int radii, int angles, int layers) {}

  /** An old track as a cylinder without end. */
  public record Bore(Line axis, double diameter) {}

  /**
   * Return the share of the thread's volume that lies outside all bores, 0 to 1.
   *
   * <p>Exact for a single bore parallel to the screw, s mm away: {@code 1 − (lens(D/2, d/2, s) −
   * lens(c/2, d/2, s)) / (π (D² − c²) / 4)}, lens being the area common to two circles, D and c the
   * outer and core diameter of the thread, d the bore. Otherwise a sum over 24 × 96 × 16 cells of
   * equal volume.
   */
  public double outside(List<Bore> bores) {
    return outside(bores, FULL);
  }

  /** Return the same from fewer cells: within 0.02, for a search over many places. */
  double roughlyOutside(List<Bore> bores) {
    return outside(bores, ROUGH);
  }

  private double outside(List<Bore> bores, Grid grid) {
    List<Bore> near = bores.stream().filter(this::mayReach).toList();
    if (near.isEmpty()) {
      return 1;
    }
    if (near.size() == 1) {
      Bore only = near.get(0);
      return axis.parallelDistance(only.axis())
          .map(distance -> outsideParallel(only.diameter(), distance))
          .orElseGet(() -> counted(near, grid));
    }
    return counted(near, grid);
  }

  private double outsideParallel(double bore, double distance) {
    double common = lens(major / 2, bore / 2, distance) - lens(core / 2, bore / 2, distance);
    return 1 - common / (Math.PI * (major * major - core * core) / 4);
  }

  /** Return the area common to two circles whose middles lie {@code s} apart. */
  static double lens(double r, double q, double s) {
    if (s >= r + q) {
      return 0;
    }
    if (s <= Math.abs(r - q)) {
      double least = Math.min(r, q);
      return Math.PI * least * least;
    }
    double a = (s * s + r * r - q * q) / (2 * s);
    double b = s - a;
    return segment(r, a) + segment(q, b);
  }

  /** Return the area that a chord at distance {@code a} from the middle cuts off a circle. */
  private static double segment(double r, double a) {
    double bounded = Math.max(-1, Math.min(1, a / r));
    return r * r * Math.acos(bounded) - a * Math.sqrt(Math.max(0, r * r - a * a));
  }

  /** Return false where the bore certainly passes clear of the whole sleeve. */
  private boolean mayReach(Bore bore) {
    double[] middle = axis.at(from + length / 2);
    double reach = Math.hypot(length / 2, major / 2) + bore.diameter() / 2;
    return bore.axis().squaredDistance(middle[0], middle[1], middle[2]) <= reach * reach;
  }

  private double counted(List<Bore> bores, Grid grid) {
    double[] u = across();
    double[] v = {
      axis.dy() * u[2] - axis.dz() * u[1],
      axis.dz() * u[0] - axis.dx() * u[2],
      axis.dx() * u[1] - axis.dy() * u[0]
    };
    int free = 0;
    for (int k = 0; k < grid.layers; k++) {
      double[] middle = axis.at(from + length * (k + 0.5) / grid.layers);
      for (int i = 0; i < grid.radii; i++) {
        double radius = radius((i + 0.5) / grid.radii);
        for (int j = 0; j < grid.angles; j++) {
          double angle = 2 * Math.PI * (j + 0.5) / grid.angles;
          double a = radius * Math.cos(angle);
          double b = radius * Math.sin(angle);
          if (isFree(
              bores,
              middle[0] + a * u[0] + b * v[0],
              middle[1] + a * u[1] + b * v[1],
              middle[2] + a * u[2] + b * v[2])) {
            free++;
          }
        }
      }
    }
    return free / (double) (grid.layers * grid.radii * grid.angles);
  }

  /** Rings of equal area: the square of the radius grows evenly. */
  private double radius(double share) {
    double inner = core * core / 4;
    return Math.sqrt(inner + share * (major * major / 4 - inner));
  }

  private static boolean isFree(List<Bore> bores, double px, double py, double pz) {
    for (Bore bore : bores) {
      double radius = bore.diameter() / 2;
      if (bore.axis().squaredDistance(px, py, pz) <= radius * radius) {
        return false;
      }
    }
    return true;
  }

  /** Return a unit vector across the axis: along the bone, made square to the screw. */
  private double[] across() {
    double ux = -axis.dz() * axis.dx();
    double uy = -axis.dz() * axis.dy();
    double uz = 1 - axis.dz() * axis.dz();
    double length2 = Math.sqrt(ux * ux + uy * uy + uz * uz);
    return new double[] {ux / length2, uy / length2, uz / length2};
  }
}
