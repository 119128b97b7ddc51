package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.section.PlateHole;
import org.bonewright.mechanics.section.PlateStress;

/** Cuts a plate at its holes and at the fracture and reads what it carries there. */
final class PlateCuts {

  /** How the edge of a hole raises the stress of bending across the bone. */
  private static final double ACROSS = 2;

  private PlateCuts() {}

  /** Return the cuts of a plate from proximal to distal. */
  static List<PlateCut> of(PlateLine line, Answer answer) {
    NavigableMap<Double, PlateCut> cuts = new TreeMap<>();
    for (PlateLine.Stretch stretch : line.stretches()) {
      Six far = answer.force(stretch.link());
      for (double level : levels(line.plate(), stretch)) {
        PlateCut cut = cut(line.plate(), level, stretch.to() - level, far);
        cuts.merge(level, cut, (a, b) -> a.equivalent() >= b.equivalent() ? a : b);
      }
    }
    return List.copyOf(cuts.values());
  }

  private static List<Double> levels(MetalPlate plate, PlateLine.Stretch stretch) {
    List<Double> levels = new ArrayList<>();
    plate.holes().stream()
        .filter(hole -> hole >= stretch.from() && hole <= stretch.to())
        .forEach(levels::add);
    if (stretch.from() < 0 && stretch.to() > 0 && !levels.contains(0.0)) {
      levels.add(0.0);
    }
    return levels;
  }

  private static PlateCut cut(MetalPlate plate, double level, double fromFar, Six far) {
    double strong = far.aboutAway() - fromFar * far.across();
    double weak = far.aboutAcross() + fromFar * far.away();
    double axial = far.along();
    double torque = far.aboutAlong();
    boolean hole = plate.holes().contains(level);
    PlateStress stress =
        hole
            ? PlateStress.atHole(plate.hole(), axial, weak, strong, torque)
            : PlateStress.solid(plate.section(), axial, weak, strong, torque);
    double edge = hole ? atEdgeOf(plate.hole(), stress) : stress.nominal();
    return new PlateCut(
        level,
        axial,
        far.away(),
        far.across(),
        weak,
        strong,
        torque,
        stress.nominal(),
        edge,
        stress.withShear(edge));
  }

  private static double atEdgeOf(PlateHole hole, PlateStress stress) {
    return hole.bendingFactor() * stress.bending()
        + hole.tensionFactor() * stress.tension()
        + ACROSS * stress.besideHole();
  }
}
