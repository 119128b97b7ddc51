package org.bonewright.mechanics.frame;

import java.util.List;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.Give;

/**
 * Makes the link of a straight Timoshenko beam whose section may change along it. How much its far
 * end gives is summed up from piece to piece; the inverse of that is the stiffness of the link, and
 * equilibrium does the rest.
 */
public final class Beams {

  private Beams() {}

  /**
   * A length of one section.
   *
   * @param length in mm, at least zero
   * @param stiffness what it resists
   */
  public record Piece(double length, BeamStiffness stiffness) {}

  /**
   * A place that gives more than its section says.
   *
   * @param fromFar distance from the far end in mm
   * @param give what it gives
   */
  public record Soft(double fromFar, Give give) {}

  /**
   * Return the link of a beam.
   *
   * @param first node that carries its near end
   * @param second node that carries its far end
   * @param near where its near end is; an arm from the node to there is rigid
   * @param far where its far end is
   * @param away the direction of weak bending
   * @param pieces the pieces from the near end to the far end; their lengths add up to its own
   * @param softer places that give more
   */
  public static Link link(
      int first,
      int second,
      Vector near,
      Vector far,
      Vector away,
      List<Piece> pieces,
      List<Soft> softer) {
    double axial = 0;
    double torsion = 0;
    double[] weak = new double[3]; // shift for force, shift for moment, turn for moment
    double[] strong = new double[3];
    double from = far.minus(near).length();
    for (Piece piece : pieces) {
      double to = from - piece.length();
      BeamStiffness s = piece.stiffness();
      axial += piece.length() / s.axial();
      torsion += piece.length() / s.torsion();
      bend(weak, to, from, s.weak(), s.shearWeak());
      bend(strong, to, from, s.strong(), s.shearStrong());
      from = to;
    }
    for (Soft soft : softer) {
      axial += soft.give().axial();
      torsion += soft.give().torsion();
      kink(weak, soft.fromFar(), soft.give().weak());
      kink(strong, soft.fromFar(), soft.give().strong());
    }
    SixSquare.Maker stiffness = new SixSquare.Maker();
    stiffness.set(0, 0, 1 / axial).set(3, 3, 1 / torsion);
    // Bending away turns about the third axis, bending across about the second, the other way
    // round.
    invert(stiffness, 1, 5, weak[0], weak[1], weak[2]);
    invert(stiffness, 2, 4, strong[0], -strong[1], strong[2]);
    return new Link(first, second, far, Axes.of(far.minus(near), away), stiffness.make());
  }

  private static void bend(double[] give, double to, double from, double bending, double shear) {
    give[0] += (from * from * from - to * to * to) / 3 / bending + (from - to) / shear;
    give[1] += (from * from - to * to) / 2 / bending;
    give[2] += (from - to) / bending;
  }

  private static void kink(double[] give, double at, double turn) {
    give[0] += at * at * turn;
    give[1] += at * turn;
    give[2] += turn;
  }

  private static void invert(
      SixSquare.Maker stiffness, int shift, int turn, double force, double mixed, double moment) {
    double determinant = force * moment - mixed * mixed;
    stiffness
        .set(shift, shift, moment / determinant)
        .set(turn, turn, force / determinant)
        .set(shift, turn, -mixed / determinant);
  }
}
