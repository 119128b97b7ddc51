package org.bonewright.measures.force;

import java.util.function.ToDoubleFunction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.force.ForceMeasure.Part;
import org.bonewright.measures.force.ForceMeasure.WhenClosed;

/** What the line does under load: how far its ends move, and how much of them touches. */
final class MovementMeasures {

  private MovementMeasures() {}

  static Measure strain(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "gap-strain",
        "Strain at the line",
        new Definition.Domain.Numbers("%", "%", 0, Double.POSITIVE_INFINITY, 0),
        "the largest opening or closing anywhere round the outer ring under the load of"
            + " the first six weeks, over the gap; over a zone in pieces, over the sum of its gaps, taken as a"
            + " quarter to the whole of it. Closing ends at 100 %, and 100 % stands where the load is not"
            + " borne or the fragments come off each other. None where the ends touch",
        "frame model; Perren, J Bone Joint Surg Br 2002, for its meaning (from memory)",
        Part.WHOLE,
        WhenClosed.NO_GAP,
        solved -> Math.rint(solved.strain() * 100) / 100);
  }

  static Measure farMovement(Modelling modelling) {
    return movement(
        modelling,
        "far-cortex-movement",
        "Movement at the far cortex",
        "opening or closing of the line opposite the longest plate under the load of the first six weeks,"
            + " without its sign",
        Part.PLATE,
        solved -> Math.abs(solved.far()));
  }

  static Measure nearMovement(Modelling modelling) {
    return movement(
        modelling,
        "near-cortex-movement",
        "Movement at the near cortex",
        "opening or closing of the line under the longest plate under the load of the first six weeks,"
            + " without its sign",
        Part.PLATE,
        solved -> Math.abs(solved.near()));
  }

  static Measure most(Modelling modelling) {
    return movement(
        modelling,
        "gap-movement",
        "Movement at the line",
        "the largest opening or closing of the line anywhere round the outer ring under the load of"
            + " the first six weeks",
        Part.WHOLE,
        Solved::most);
  }

  static Measure shear(Modelling modelling) {
    return movement(
        modelling,
        "shear-movement",
        "Movement across the line",
        "the largest movement in the plane of the line at the outer ring under the load of"
            + " the first six weeks, turning included",
        Part.WHOLE,
        Solved::shear);
  }

  static Measure contact(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "contact-under-load",
        "Ring in contact under load",
        Definition.percent(),
        "share of the ring of the bone that touches under the load of the first six weeks",
        "frame model with ends that push and never pull",
        Part.WHOLE,
        WhenClosed.SAME,
        Solved::contact);
  }

  private static Measure movement(
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
        Definition.millimetres(),
        formula,
        "frame model",
        part,
        WhenClosed.SAME,
        number);
  }
}
