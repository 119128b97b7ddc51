package org.bonewright.mechanics.model;

import org.bonewright.mechanics.frame.Six;
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
  private static final double[] COSINES = new double[ANGLES];
  private static final double[] SINES = new double[ANGLES];
  private static final double[] GAUSS = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
  private static final double[] WEIGHT = {5.0 / 9, 8.0 / 9, 5.0 / 9};

  static {
    for (int a = 0; a < ANGLES; a++) {
      COSINES[a] = Math.cos(2 * Math.PI * a / ANGLES);
      SINES[a] = Math.sin(2 * Math.PI * a / ANGLES);
    }
  }

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
        x[point] = radius * COSINES[a];
        y[point] = radius * SINES[a];
        area[point] = WEIGHT[r] * half * radius * 2 * Math.PI / ANGLES;
      }
    }
  }

  /** Return the mean radius of the ring in mm. */
  double middle() {
    return middle;
  }

  /**
   * What the closed points do. They push along the bone only, so that three of the six movements
   * matter: apart (0), and the tilts about the second and third axis (4 and 5).
   *
   * @param energy stored, in N·mm
   * @param force that presses, in N
   * @param about4 moment on the distal side about the second axis in N·mm
   * @param about5 moment on the distal side about the third axis in N·mm
   * @param k00 stiffness of force against movement; so on for the other five
   * @param closed share of the ring that is closed, from 0 to 1
   */
  record Push(
      double energy,
      double force,
      double about4,
      double about5,
      double k00,
      double k04,
      double k05,
      double k44,
      double k45,
      double k55,
      double closed) {}

  /** Return what the ends do to each other after a movement of six numbers, without friction. */
  Push push(double[] w) {
    double energy = 0;
    double force = 0;
    double about4 = 0;
    double about5 = 0;
    double k00 = 0;
    double k04 = 0;
    double k05 = 0;
    double k44 = 0;
    double k45 = 0;
    double k55 = 0;
    double closed = 0;
    double whole = 0;
    double apart = w[0] + gap;
    for (int i = 0; i < area.length; i++) {
      double opening = apart + y[i] * w[4] - x[i] * w[5];
      whole += area[i];
      if (opening < 0) {
        double spring = perArea * area[i];
        double pressed = -spring * opening;
        energy -= 0.5 * pressed * opening;
        force += pressed;
        about4 += pressed * y[i];
        about5 -= pressed * x[i];
        k00 += spring;
        k04 += spring * y[i];
        k05 -= spring * x[i];
        k44 += spring * y[i] * y[i];
        k45 -= spring * x[i] * y[i];
        k55 += spring * x[i] * x[i];
        closed += area[i];
      }
    }
    return new Push(energy, force, about4, about5, k00, k04, k05, k44, k45, k55, closed / whole);
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
