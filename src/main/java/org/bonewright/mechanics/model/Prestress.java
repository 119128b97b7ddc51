package org.bonewright.mechanics.model;

import java.util.Map;
import java.util.Optional;
import org.bonewright.mechanics.construct.Compression;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Movements;
import org.bonewright.mechanics.frame.Six;

/**
 * What keeps the bone ends pressed together before any load: the stretch of the first plate across
 * the fracture is set too short and bent, by so much that closed ends press with the wanted force
 * at the wanted place.
 *
 * @param shortening how much too short it is, in mm
 * @param kink how far it is bent at the level of the fracture, in rad
 */
record Prestress(double shortening, double kink) {

  /** Nothing is pressed. */
  static final Prestress NONE = new Prestress(0, 0);

  private static final double UNIT = 1e-3;

  /**
   * The pair of forces that stands for the prestress.
   *
   * @param link index of the stretch
   * @param force what the stretch would need to look unstressed: six numbers in its axes
   */
  record Pull(int link, Six force) {}

  /**
   * Return the prestress that gives the wanted compression.
   *
   * @return empty if no plate crosses the fracture, or something could move without resistance
   */
  static Optional<Prestress> of(FixedBone fixed) {
    if (fixed.compression().isEmpty()) {
      return Optional.of(NONE);
    }
    Compression wanted = fixed.compression().get();
    Optional<Joined> closed = Joined.of(fixed, Map.of(), true);
    if (closed.isEmpty()) {
      return Optional.empty();
    }
    Optional<Six> short1 = between(closed.get(), new Prestress(UNIT, 0));
    Optional<Six> kink1 = between(closed.get(), new Prestress(0, UNIT));
    if (short1.isEmpty() || kink1.isEmpty()) {
      return Optional.empty();
    }
    double a = short1.get().along();
    double b = kink1.get().along();
    double c = short1.get().aboutAcross();
    double d = kink1.get().aboutAcross();
    double determinant = a * d - b * c;
    double axial = -wanted.force();
    double moment = wanted.force() * wanted.towardsPlate();
    return Optional.of(
        new Prestress(
            UNIT * (axial * d - b * moment) / determinant,
            UNIT * (a * moment - c * axial) / determinant));
  }

  /** Return what the closed ends carry under this prestress: six numbers, tension positive. */
  private static Optional<Six> between(Joined closed, Prestress prestress) {
    return prestress
        .on(closed)
        .map(
            pull -> {
              Movements moved =
                  closed.frame().under(closed.frame().loads().pair(pull.link(), pull.force()));
              return carried(closed.ends(), moved);
            });
  }

  /** Return what a pair of closed ends carries: six numbers, tension positive. */
  static Six carried(Link ends, Movements moved) {
    return ends.stiffness().times(moved.across(ends));
  }

  /** Return the pair of forces that stands for this in a joined bone; empty where there is none. */
  Optional<Pull> on(Joined joined) {
    if ((shortening == 0 && kink == 0) || joined.plates().isEmpty()) {
      return Optional.empty();
    }
    return joined.plates().get(0).stretches().stream()
        .filter(stretch -> stretch.from() < 0 && stretch.to() > 0)
        .findFirst()
        .map(
            stretch -> {
              Six initial = new Six(-shortening, kink * stretch.to(), 0, 0, 0, kink);
              return new Pull(
                  stretch.link(), joined.frame().stiffness(stretch.link()).times(initial));
            });
  }
}
