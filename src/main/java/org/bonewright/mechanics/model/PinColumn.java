package org.bonewright.mechanics.model;

import java.util.List;
import org.bonewright.mechanics.answer.PinDemand;
import org.bonewright.mechanics.construct.BarFixator;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * A pin of a fixator: its shank from the nearest bar to the bone, then the core of its thread
 * through both cortices.
 */
final class PinColumn {

  private final BarFixator.Pin pin;
  private final int neck;
  private final double free;

  private PinColumn(BarFixator.Pin pin, int neck, double free) {
    this.pin = pin;
    this.neck = neck;
    this.free = free;
  }

  /** Put a pin into a frame, from the nearest bar. */
  static PinColumn of(
      Frame frame, BarFixator.Pin pin, Vector outward, Shaft shaft, int onBone, BeamLine nearest) {
    Vector clamp = nearest.point(pin.at());
    double middle = shaft.section().middleRadius();
    double outside = clamp.dot(outward) - shaft.section().outer() / 2;
    List<Integer> beams =
        Shank.through(
            frame,
            nearest.at(pin.at()),
            clamp,
            new Shank.Passage(
                outward,
                pin.at(),
                stiffness(pin, pin.core()),
                pin.diameter(),
                List.of(new Beams.Piece(outside, stiffness(pin, pin.diameter())))),
            List.of(
                Shank.Wall.of(middle, shaft.material(), shaft.section(), onBone, 1),
                Shank.Wall.of(-middle, shaft.material(), shaft.section(), onBone, 1)));
    return new PinColumn(pin, beams.get(0), clamp.dot(outward) - middle);
  }

  /** Return what a part of a pin of this diameter resists. */
  static BeamStiffness stiffness(BarFixator.Pin pin, double diameter) {
    Material material = pin.rigid() ? pin.material().hardened() : pin.material();
    return HollowCircle.solid(diameter).of(material);
  }

  /** Return what it carries. */
  PinDemand demand(Answer answer) {
    Six atBone = answer.force(neck);
    double bone = Math.hypot(atBone.aboutAway(), atBone.aboutAcross());
    double clamp =
        Math.hypot(
            atBone.aboutAway() - free * atBone.across(),
            atBone.aboutAcross() + free * atBone.away());
    return new PinDemand(
        pin.at(),
        atBone.along(),
        Math.hypot(atBone.away(), atBone.across()),
        bone,
        clamp,
        Math.max(
            stress(pin.core(), bone, atBone.along()),
            stress(pin.diameter(), clamp, atBone.along())));
  }

  private static double stress(double diameter, double moment, double axial) {
    HollowCircle section = HollowCircle.solid(diameter);
    return moment * diameter / 2 / section.weak() + Math.abs(axial) / section.area();
  }
}
