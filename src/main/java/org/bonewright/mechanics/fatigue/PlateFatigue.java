package org.bonewright.mechanics.fatigue;

import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.section.PlateHole;
import org.bonewright.mechanics.section.PlateStress;

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
    PlateStress steady =
        stress(plate, under.z(), before.axial(), before.weak(), before.strong(), before.torque());
    PlateStress range =
        stress(
            plate,
            under.z(),
            under.axial() - before.axial(),
            under.weak() - before.weak(),
            under.strong() - before.strong(),
            under.torque() - before.torque());
    double along =
        plate.holes().contains(under.z()) ? notched(plate.hole(), range) : range.nominal();
    return new PlateFatigue(
        steady.withShear(steady.nominal()),
        range.withShear(range.nominal()),
        range.withShear(along) / 2);
  }

  private static PlateStress stress(
      MetalPlate plate, double level, double axial, double weak, double strong, double torque) {
    return plate.holes().contains(level)
        ? PlateStress.atHole(plate.hole(), axial, weak, strong, torque)
        : PlateStress.solid(plate.section(), axial, weak, strong, torque);
  }

  /**
   * Across the bone the edge of the plate counts without a notch, the edge of the hole with one.
   */
  private static double notched(PlateHole hole, PlateStress range) {
    return Goodman.notch(hole.bendingFactor()) * range.bending()
        + Goodman.notch(hole.tensionFactor()) * range.tension()
        + Math.max(range.atEdge(), NOTCH_ACROSS * range.besideHole());
  }
}
