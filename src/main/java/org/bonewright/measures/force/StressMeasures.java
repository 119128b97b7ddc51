package org.bonewright.measures.force;

import java.util.function.ToDoubleFunction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.force.ForceMeasure.Part;
import org.bonewright.measures.force.ForceMeasure.WhenClosed;

/** What the metal bears: the stress of plates, nails, bolts and pins. */
final class StressMeasures {

  private StressMeasures() {}

  static Measure stress(Modelling modelling) {
    return stress(
        modelling,
        "plate-stress-range",
        "Range of stress in the plate",
        "largest range of the nominal stress at any hole of a plate or at the line, from no load to"
            + " the load of the first six weeks",
        Part.PLATE,
        Solved::stress);
  }

  static Measure nailStress(Modelling modelling) {
    return stress(
        modelling,
        "nail-stress-range",
        "Range of stress in the nail",
        "largest range of the nominal stress of the nail at the line or at a bolt, from no load to"
            + " the load of the first six weeks; empty holes of the nail are not known",
        Part.NAIL,
        Solved::nail);
  }

  static Measure boltStress(Modelling modelling) {
    return stress(
        modelling,
        "bolt-stress-range",
        "Range of stress in the bolts",
        "largest range of the bending stress of a locking bolt, of its full diameter, from no load"
            + " to the load of the first six weeks",
        Part.NAIL,
        Solved::bolt);
  }

  static Measure pinStress(Modelling modelling) {
    return stress(
        modelling,
        "pin-stress-range",
        "Range of stress in the pins",
        "largest range of the bending stress of a pin of an external fixator, in the core of its"
            + " thread at the near cortex or in its shank at the clamp, from no load to the load of"
            + " the first six weeks. Clamps are taken as rigid, threads without a notch",
        Part.FIXATOR,
        Solved::pin);
  }

  static Measure steady(Modelling modelling) {
    return stress(
        modelling,
        "plate-stress-steady",
        "Steady stress in the plate",
        "nominal stress before any load, from what presses the ends together, where the range is"
            + " largest",
        Part.PLATE,
        Solved::steady);
  }

  private static Measure stress(
      Modelling modelling,
      String id,
      String title,
      String formula,
      Part part,
      ToDoubleFunction<Solved> number) {
    return new ForceMeasure(
        modelling,
        id,
        title,
        new Definition.Domain.Numbers("N/mm2", "N/mm²", 0, Double.POSITIVE_INFINITY, 0),
        formula,
        "frame model; net section at a hole",
        part,
        WhenClosed.SAME,
        number);
  }
}
