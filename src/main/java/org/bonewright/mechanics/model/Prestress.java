package org.bonewright.mechanics.model;

import java.util.Optional;
import org.bonewright.mechanics.construct.Compression;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Loads;
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
   * @param at the stretch
   * @param force what the stretch would need to look unstressed: six numbers in its axes
   */
  record Pull(int link, Link at, Six force) {}

  /**
   * Return the prestress that gives the wanted compression.
   *
   * @return empty if no plate crosses the fracture
   */
  static Optional<Prestress> of(FixedBone fixed, Joined joined) {
    if (fixed.compression().isEmpty()) {
      return Optional.of(NONE);
    }
    Compression wanted = fixed.compression().get();
    Closed closed = Closed.of(fixed, joined);
    Optional<Six> short1 = between(closed, new Prestress(UNIT, 0));
    Optional<Six> kink1 = between(closed, new Prestress(0, UNIT));
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
  private static Optional<Six> between(Closed closed, Prestress prestress) {
    return prestress
        .on(closed.joined())
        .map(
            pull -> {
              Loads loads = closed.joined().frame().loads();
              return closed.carried(loads.pair(pull.at(), pull.force()));
            });
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
              Link link = joined.frame().link(stretch.link());
              Six initial = new Six(-shortening, kink * stretch.to(), 0, 0, 0, kink);
              return new Pull(stretch.link(), link, link.stiffness().times(initial));
            });
  }
}
