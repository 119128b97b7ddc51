package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.SixSquare;
import org.bonewright.mechanics.section.HollowCircle;

/**
 * The two ends of a broken bone where they may meet: a ring of points that push when the gap at
 * them is closed, and rub. A movement is given as six numbers: apart, towards the plate, across,
 * and turns about the same three.
 *
 * <p>The points: three Gauss radii through the wall, 24 angles. A contact layer of 2 mm of bone on
 * which the ends rest makes the pressure grow with the overlap.
 */
final class BoneEnds {

  private static final int ANGLES = 24;
  private static final double[] GAUSS = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
  private static final double[] WEIGHT = {5.0 / 9, 8.0 / 9, 5.0 / 9};

  /** Thickness of the contact layer in mm. */
  static final double LAYER = 2;

  /** Tangential stiffness of closed ends as a share of the normal one. */
  static final double TANGENTIAL = 0.4;

  private final double[] x = new double[GAUSS.length * ANGLES];
  private final double[] y = new double[GAUSS.length * ANGLES];
  private final double[] area = new double[GAUSS.length * ANGLES];
  private final double perArea;
  private final double gap;
  private final double middle;

  /**
   * Make the ends.
   *
   * @param tube the bone
   * @param young modulus of the bone in MPa
   * @param gap width of the gap in mm, at least 0
   */
  BoneEnds(HollowCircle tube, double young, double gap) {
    this.perArea = young / LAYER;
    this.gap = gap;
    this.middle = tube.middleRadius();
    double half = tube.wall() / 2;
    for (int r = 0; r < GAUSS.length; r++) {
      double radius = middle + GAUSS[r] * half;
      for (int a = 0; a < ANGLES; a++) {
        int point = r * ANGLES + a;
        double angle = 2 * Math.PI * a / ANGLES;
        x[point] = radius * Math.cos(angle);
        y[point] = radius * Math.sin(angle);
        area[point] = WEIGHT[r] * half * radius * 2 * Math.PI / ANGLES;
      }
    }
  }

  /** Return the mean radius of the ring in mm. */
  double middle() {
    return middle;
  }

  /**
   * What the closed points do.
   *
   * @param energy stored, in N·mm
   * @param push on the distal side: six numbers
   * @param stiffness 6 × 6
   * @param force that presses, in N
   * @param closed share of the ring that is closed, from 0 to 1
   */
  record Push(double energy, Six push, SixSquare stiffness, double force, double closed) {}

  /** Return what the ends do to each other after a movement, without friction. */
  Push push(Six w) {
    double energy = 0;
    double force = 0;
    double closed = 0;
    double whole = 0;
    Six push = Six.NONE;
    SixSquare.Maker stiffness = new SixSquare.Maker();
    for (int i = 0; i < area.length; i++) {
      Six arm = new Six(1, 0, 0, 0, y[i], -x[i]);
      double opening = arm.dot(w) + gap;
      whole += area[i];
      if (opening < 0) {
        double spring = perArea * area[i];
        double pressed = -spring * opening;
        energy += 0.5 * pressed * -opening;
        force += pressed;
        closed += area[i];
        push = push.plus(arm.times(pressed));
        stiffness.addSquare(arm, spring);
      }
    }
    return new Push(energy, push, stiffness.make(), force, closed / whole);
  }

  /** Return the springs of ends that are closed all round and cannot part, as six numbers. */
  Six closed() {
    double axial = 0;
    double bending = 0;
    for (int i = 0; i < area.length; i++) {
      axial += perArea * area[i];
      bending += perArea * area[i] * x[i] * x[i];
    }
    double across = TANGENTIAL * axial;
    return new Six(axial, across, across, across * middle * middle, bending, bending);
  }
}
