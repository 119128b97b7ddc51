package org.bonewright.measures.force;

import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.force.ForceMeasure.Part;
import org.bonewright.measures.force.ForceMeasure.WhenClosed;

/** How long the metal lasts under loads that come again and again. */
final class EnduranceMeasures {

  private EnduranceMeasures() {}

  static Measure enduranceUsed(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "endurance-used",
        "Endurance of the metal used up",
        Definition.ratio(),
        "alternating stress at the edge of the worst hole of plate or nail, or in a bolt, over the"
            + " endurance limit, plus mean stress over tensile strength; above 1 it breaks in time. Pins"
            + " of a fixator are left out: they work loose before they break, and can be changed",
        "Goodman's line; endurance limits from memory, as ranges",
        Part.WITHIN,
        WhenClosed.SAME,
        Solved::use);
  }

  static Measure life(Modelling modelling) {
    return new ForceMeasure(
        modelling,
        "metal-life-over-union",
        "Life of the metal over time to union",
        Definition.ratio(),
        "cycles to failure of the worst hole of plate or nail, or of a bolt, over the loads that come until the usual time of"
            + " union, at the load of the first six weeks, which may rise as the bone shares it; 100"
            + " stands for more, 0.01 for less. None where the ends touch. Pins of a"
            + " fixator are left out: they work loose before they break, and can be changed",
        "line of stress over cycles through two points (convention of textbooks, from memory); about"
            + " a million steps a year (Griffin et al., J Orthop Surg Res 2009, excerpt read)",
        Part.WITHIN,
        WhenClosed.SHARED,
        Solved::life);
  }
}
