package org.bonewright.mechanics.fatigue;

import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.section.PlateHole;
import org.bonewright.mechanics.section.Rectangle;

/**
 * The stress of a plate at one cut as fatigue sees it: a steady part from what presses the
 * fragments together, and a range from a load that comes and goes. In the range the edge of a hole
 * counts with {@link Goodman#notch}; the mean is nominal, since metal that yields a little levels
 * it out (usual for ductile metals, from memory). Shear from torsion joins by von Mises.
 *
 * @param steady nominal stress in MPa before the load
 * @param range nominal range of the stress in MPa under the load
 * @param alternating half of that range in MPa, notch included
 */
public record PlateFatigue(double steady, double range, double alternating) {

  /** Return the nominal stress in MPa half way through the range. */
  public double mean() {
    return steady + range / 2;
  }

  private static final double NOTCH_ACROSS = Goodman.notch(2);

  /**
   * Return the stresses at one level of a plate.
   *
   * @param plate the plate
   * @param before what it carries there before the load
   * @param under what it carries there under the load; at the same level
   */
  public static PlateFatigue at(MetalPlate plate, PlateCut before, PlateCut under) {
    Parts steady = Parts.of(before);
    Parts range = Parts.of(under).minus(steady);
    if (!plate.holes().contains(under.z())) {
      double solid = solid(plate.section(), range);
      return new PlateFatigue(solid(plate.section(), steady), solid, solid / 2);
    }
    PlateHole hole = plate.hole();
    Factors notch =
        new Factors(
            Goodman.notch(hole.tensionFactor()), Goodman.notch(hole.bendingFactor()), NOTCH_ACROSS);
    return new PlateFatigue(
        atHole(hole, steady, Factors.NONE),
        atHole(hole, range, Factors.NONE),
        atHole(hole, range, notch) / 2);
  }

  /** What bears on a section: N along, N·mm away from the bone, across it, and about the plate. */
  private record Parts(double axial, double weak, double strong, double torque) {
    static Parts of(PlateCut cut) {
      return new Parts(cut.axial(), cut.weak(), cut.strong(), cut.torque());
    }

    Parts minus(Parts other) {
      return new Parts(
          axial - other.axial, weak - other.weak, strong - other.strong, torque - other.torque);
    }
  }

  /** How the edge of the hole counts in tension, bending away from the bone, and across it. */
  private record Factors(double tension, double bending, double across) {
    static final Factors NONE = new Factors(1, 1, 1);
  }

  private static double solid(Rectangle section, Parts parts) {
    double along =
        Math.abs(parts.weak) * section.thickness() / 2 / section.weak()
            + Math.abs(parts.axial) / section.area()
            + Math.abs(parts.strong) * section.width() / 2 / section.strong();
    return joined(along, Math.abs(parts.torque) * section.thickness() / section.torsion());
  }

  /**
   * Across the bone the edge of the plate counts without a notch, the edge of the hole with one.
   */
  private static double atHole(PlateHole hole, Parts parts, Factors factors) {
    Rectangle section = hole.plate();
    double bending = Math.abs(parts.weak) * section.thickness() / 2 / hole.netWeak();
    double tension = Math.abs(parts.axial) / hole.netArea();
    double across = Math.abs(parts.strong) / hole.netStrong();
    double widest = Math.max(section.width() / 2, factors.across() * hole.diameter() / 2);
    double along = factors.bending() * bending + factors.tension() * tension + across * widest;
    double left = 1 - hole.diameter() / section.width();
    return joined(along, Math.abs(parts.torque) * section.thickness() / (section.torsion() * left));
  }

  private static double joined(double along, double shear) {
    return Math.sqrt(along * along + 3 * shear * shear);
  }
}
