package org.bonewright.mechanics.model;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.OnlayStrut;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.PlateStress;

/**
 * A strut on the surface of the bone: a node at each screw that passes through it and at each wire.
 * A wire presses it on the bone as a screw presses a plate, on a patch that neither slips nor
 * lifts.
 */
final class OnlayLine {

  /** A wire presses a strut as a screw presses a plate: radius of the patch in mm. */
  private static final double PATCH = 5;

  private final OnlayStrut strut;
  private final Vector outward;
  private final double outer;
  private final BeamLine beam;

  private OnlayLine(Frame frame, OnlayStrut strut, double outer, SortedSet<Double> levels) {
    this.strut = strut;
    this.outer = outer;
    this.outward = Turned.outward(strut.azimuth());
    this.beam =
        new BeamLine(
            frame,
            strut.section(),
            strut.material(),
            outward.times(outer / 2 + strut.section().thickness() / 2),
            outward,
            levels);
  }

  /** Lay the strut of a bone into a frame; empty where nothing holds it at two levels. */
  static Optional<OnlayLine> of(Frame frame, FixedBone fixed, BoneLine bone) {
    if (fixed.beside().onlay().isEmpty()) {
      return Optional.empty();
    }
    OnlayStrut strut = fixed.beside().onlay().get();
    SortedSet<Double> levels = new TreeSet<>(strut.wires());
    fixed.screws().stream()
        .filter(screw -> passes(strut, screw, fixed.plates().get(screw.plate())))
        .forEach(screw -> levels.add(screw.at()));
    if (levels.size() < 2) {
      return Optional.empty();
    }
    OnlayLine line = new OnlayLine(frame, strut, fixed.shaft().section().outer(), levels);
    strut.wires().forEach(wire -> line.tie(frame, fixed, bone, wire));
    return Optional.of(line);
  }

  private static boolean passes(OnlayStrut strut, PlateScrew screw, MetalPlate plate) {
    return screw.far() > 0 && strut.isPassed(screw.at()) && strut.isOpposite(plate.azimuth());
  }

  private void tie(Frame frame, FixedBone fixed, BoneLine bone, double wire) {
    Patch patch = new Patch(new Head.Pressed(1, PATCH, 0), fixed.shaft().material());
    frame.link(
        Link.springs(
            bone.at(wire),
            beam.at(wire),
            outward.times(outer / 2).plus(BoneLine.ALONG.times(wire)),
            Turned.screw(outward),
            patch.springs()));
  }

  /** Return the wall that a screw of a plate passes in it; empty where it passes none. */
  Optional<Shank.Wall> wall(PlateScrew screw, MetalPlate plate) {
    return passes(strut, screw, plate)
        ? Optional.of(
            new Shank.Wall(
                -(outer + strut.section().thickness()) / 2,
                strut.material(),
                strut.section().thickness(),
                outer,
                beam.at(screw.at()),
                1))
        : Optional.empty();
  }

  /** Return what it carries at the fracture; empty where nothing holds it on one side. */
  Optional<PlateCut> cut(Answer answer) {
    return beam.cuts(answer).stream().filter(cut -> cut.z() == 0).findFirst().map(this::stressed);
  }

  private PlateCut stressed(TubeCut cut) {
    PlateStress stress =
        PlateStress.solid(
            strut.section(), cut.axial(), cut.bendingY(), cut.bendingX(), cut.torque());
    double nominal = stress.nominal();
    return new PlateCut(
        0,
        cut.axial(),
        0,
        0,
        cut.bendingY(),
        cut.bendingX(),
        cut.torque(),
        nominal,
        nominal,
        stress.withShear(nominal));
  }
}
