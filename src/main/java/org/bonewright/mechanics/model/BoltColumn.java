package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bonewright.mechanics.answer.BoltDemand;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Axes;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/** A locking bolt: from the middle of its nail to both cortices. */
final class BoltColumn {

  private static final double TIED = 1e8;

  /** The same against turning, in N·mm/rad. */
  private static final double TIED_TURN = 1e10;

  /**
   * Resists the swing of a nail about its bolt, in N·mm/rad, or where the bolt is fixed in the
   * nail, of both in the bone: too soft to count against two bolts. A bone that hangs on one swings
   * until its canal stops it.
   */
  private static final double SWING = 1000;

  /** Keeps a bolt that turns in the nail from turning in the cortex as well, in N·mm/rad. */
  private static final double THREADED = 1e6;

  /**
   * Share of the axial hold of a bolt in bone that resists sliding, along the bolt or in its slot,
   * so that it is not free.
   */
  private static final double SLIDING = 1e-3;

  private final MetalNail.Bolt bolt;
  private final List<Integer> halves;
  private final double free;

  private BoltColumn(MetalNail.Bolt bolt, List<Integer> halves, double free) {
    this.bolt = bolt;
    this.halves = List.copyOf(halves);
    this.free = free;
  }

  /** Put a bolt into a frame. */
  static BoltColumn of(
      Frame frame, MetalNail nail, MetalNail.Bolt bolt, Shaft shaft, int onNail, int onBone) {
    Vector out = Turned.outward(bolt.azimuth());
    Axes axes = Turned.screw(out);
    Vector centre = BoneLine.ALONG.times(bolt.at());
    double middle = shaft.section().middleRadius();
    double radius = nail.section().outer() / 2;
    Six support = support(bolt, shaft);
    int inside = frame.node(centre);
    List<Integer> halves = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      Vector at = centre.plus(out.times(side * middle));
      int node = frame.node(at);
      halves.add(
          frame.link(
              Beams.link(
                  inside,
                  node,
                  centre,
                  at,
                  BoneLine.ALONG,
                  List.of(
                      new Beams.Piece(radius, BeamStiffness.RIGID),
                      new Beams.Piece(middle - radius, stiffness(bolt))),
                  List.of())));
      frame.link(Link.springs(onBone, node, at, axes, support));
    }
    frame.link(Link.springs(onNail, inside, centre, axes, joint(nail, bolt, support.along())));
    return new BoltColumn(bolt, halves, middle - radius);
  }

  private static Six support(MetalNail.Bolt bolt, Shaft shaft) {
    Six held = CortexSupport.springs(shaft.material(), shaft.section(), bolt.diameter(), 1);
    return new Six(
        held.along(),
        held.away(),
        held.across(),
        bolt.fixed() ? SWING : THREADED,
        held.aboutAway(),
        held.aboutAcross());
  }

  /** The bolt first, then along the nail. */
  private static Six joint(MetalNail nail, MetalNail.Bolt bolt, double axial) {
    double along = bolt.slides() ? axial * SLIDING : TIED;
    if (bolt.fixed()) {
      return new Six(TIED, along, TIED, TIED_TURN, TIED_TURN, TIED_TURN);
    }
    double outer = nail.section().outer() / 2;
    double bore = nail.section().inner() / 2;
    double tilt = nail.material().young() * (Math.pow(outer, 3) - Math.pow(bore, 3)) / 3;
    return new Six(axial * SLIDING, along, TIED, SWING, tilt, tilt);
  }

  private static BeamStiffness stiffness(MetalNail.Bolt bolt) {
    Material material = bolt.rigid() ? bolt.material().hardened() : bolt.material();
    return HollowCircle.solid(bolt.diameter()).of(material);
  }

  /** Return what it carries: the half that is bent more. */
  BoltDemand demand(Answer answer) {
    return halves.stream()
        .map(half -> demand(answer.force(half)))
        .max(Comparator.comparingDouble(BoltDemand::bendingStress))
        .orElseThrow();
  }

  private BoltDemand demand(Six atBone) {
    double moment =
        Math.max(
            Math.hypot(atBone.aboutAway(), atBone.aboutAcross()),
            Math.hypot(
                atBone.aboutAway() - free * atBone.across(),
                atBone.aboutAcross() + free * atBone.away()));
    HollowCircle section = HollowCircle.solid(bolt.diameter());
    return new BoltDemand(
        bolt.at(),
        Math.hypot(atBone.away(), atBone.across()),
        moment,
        moment * bolt.diameter() / 2 / section.weak() + Math.abs(atBone.along()) / section.area());
  }
}
