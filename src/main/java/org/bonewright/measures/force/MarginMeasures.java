package org.bonewright.measures.force;

import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.force.ForceMeasure.Part;
import org.bonewright.measures.force.ForceMeasure.WhenClosed;

/** How much more it bears: until a screw is pulled out, until a closed line opens. */
final class MarginMeasures {

  private MarginMeasures() {}

  static Measure margin(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "screw-pull-margin",
        "Margin of the most loaded screw",
        Definition.ratio(),
        "pull at which its thread strips over the pull on it under the load of the first six weeks, the"
            + " smallest of all plate screws; below 1 also where the plates slip before that load is"
            + " reached, 0 where the fragments come off each other; 100 stands for more",
        "frame model; Chapman et al., J Biomech Eng 1996 (abstract read), used in cortex by extension",
        Part.PLATE,
        WhenClosed.SAME,
        Solved::margin);
  }

  static Measure opening(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "opening-moment",
        "Moment that opens the far cortex",
        new Definition.Domain.Numbers("N.m", "N·m", 0, Double.POSITIVE_INFINITY, 0),
        "bending moment at which the cortex opposite the plate opens; 0 where it is open before any"
            + " load, or nothing presses the ends together. None where there is a gap",
        "frame model; pressing forces by method of compression, from memory",
        Part.PLATE,
        WhenClosed.ONLY,
        solved -> Math.max(0, solved.opening()));
  }
}
