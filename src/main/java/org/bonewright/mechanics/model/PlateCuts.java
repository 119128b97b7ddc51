package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.section.PlateHole;
import org.bonewright.mechanics.section.Rectangle;

/** Cuts a plate at its holes and at the fracture and reads what it carries there. */
final class PlateCuts {

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
    Stress stress =
        plate.holes().contains(level)
            ? atHole(plate.hole(), axial, weak, strong, torque)
            : solid(plate.section(), axial, weak, strong, torque);
    return new PlateCut(
        level,
        axial,
        far.away(),
        far.across(),
        weak,
        strong,
        torque,
        stress.nominal(),
        stress.edge(),
        Math.sqrt(stress.edge() * stress.edge() + 3 * stress.shear() * stress.shear()));
  }

  private record Stress(double nominal, double edge, double shear) {}

  private static Stress solid(
      Rectangle section, double axial, double weak, double strong, double torque) {
    double t = section.thickness();
    double stress =
        Math.abs(weak) * t / 2 / section.weak()
            + Math.abs(axial) / section.area()
            + Math.abs(strong) * section.width() / 2 / section.strong();
    return new Stress(stress, stress, Math.abs(torque) * t / section.torsion());
  }

  private static Stress atHole(
      PlateHole hole, double axial, double weak, double strong, double torque) {
    Rectangle section = hole.plate();
    double t = section.thickness();
    double bending = Math.abs(weak) * t / 2 / hole.netWeak();
    double tension = Math.abs(axial) / hole.netArea();
    double across = Math.abs(strong) / hole.netStrong();
    double shear =
        Math.abs(torque) * t / (section.torsion() * (1 - hole.diameter() / section.width()));
    return new Stress(
        bending + tension + across * section.width() / 2,
        hole.bendingFactor() * bending
            + hole.tensionFactor() * tension
            + 2 * across * hole.diameter() / 2,
        shear);
  }
}
