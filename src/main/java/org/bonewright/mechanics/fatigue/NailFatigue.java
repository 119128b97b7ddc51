package org.bonewright.mechanics.fatigue;

import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.section.NailHole;
import org.bonewright.mechanics.section.NailStress;

/**
 * The stress of a nail at one level as fatigue sees it, with the same conventions as {@link
 * PlateFatigue}. A nail is under nothing before the load.
 *
 * @param range nominal range of the stress in MPa under the load
 * @param alternating half of that range in MPa, the notch of a hole included
 */
public record NailFatigue(double range, double alternating) {

  /** A hole is wider than its bolt by about so much, in mm; from memory. */
  private static final double WIDER = 0.3;

  /** Return the nominal stress in MPa half way through the range. */
  public double mean() {
    return range / 2;
  }

  /**
   * Return the stresses at one level.
   *
   * @param nail the nail; a bolt at the level stands for a hole there
   * @param cut what the load makes it carry there
   */
  public static NailFatigue at(MetalNail nail, TubeCut cut) {
    NailStress solid = NailStress.solid(nail.section(), cut.axial(), cut.bending(), cut.torque());
    double range = solid.withShear(solid.nominal());
    double alternating = range / 2;
    for (MetalNail.Bolt bolt : nail.bolts()) {
      if (bolt.at() == cut.z() && bolt.diameter() + WIDER < nail.section().outer()) {
        NailHole hole = new NailHole(nail.section(), bolt.diameter() + WIDER);
        NailStress left =
            NailStress.atHole(
                hole,
                cut.axial(),
                cut.towards(bolt.azimuth()),
                cut.towards(bolt.azimuth() + 90),
                cut.torque());
        double notched = Goodman.notch(hole.factor()) * (left.tension() + left.open());
        range = Math.max(range, left.withShear(left.nominal()));
        alternating =
            Math.max(
                alternating,
                left.withShear(Math.max(notched, left.tension() + left.bending())) / 2);
      }
    }
    return new NailFatigue(range, alternating);
  }
}
