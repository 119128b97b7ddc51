package org.bonewright.mechanics.model;

import java.util.List;
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

/** A nail on the axis of the bone, with its bolts through both cortices. */
final class NailLine {

  private static final double TIED = 1e8;
  private static final double RIGID = 1e4;

  /**
   * Share of the axial hold of a bolt in bone that resists sliding along it, so that it is not
   * free.
   */
  private static final double SLIDING = 1e-3;

  private NailLine() {}

  /** Lay a nail into a frame. */
  static void lay(Frame frame, MetalNail nail, Shaft shaft, BoneLine bone) {
    List<Double> levels = nail.bolts().stream().map(MetalNail.Bolt::at).toList();
    LevelNodes nodes = new LevelNodes(frame, levels, BoneLine.ALONG::times);
    BeamStiffness stiffness = nail.section().of(nail.material());
    nodes.eachStretch((from, to) -> frame.link(beam(nodes, from, to, stiffness)));
    nail.bolts()
        .forEach(bolt -> bolt(frame, nail, bolt, shaft, nodes.at(bolt.at()), bone.at(bolt.at())));
  }

  private static Link beam(LevelNodes nodes, double from, double to, BeamStiffness stiffness) {
    return Beams.link(
        nodes.at(from),
        nodes.at(to),
        BoneLine.ALONG.times(from),
        BoneLine.ALONG.times(to),
        new Vector(1, 0, 0),
        List.of(new Beams.Piece(to - from, stiffness)),
        List.of());
  }

  private static void bolt(
      Frame frame, MetalNail nail, MetalNail.Bolt bolt, Shaft shaft, int onNail, int onBone) {
    Vector out = Turned.outward(bolt.azimuth());
    Axes axes = Turned.screw(out);
    Vector centre = BoneLine.ALONG.times(bolt.at());
    double middle = shaft.section().middleRadius();
    double radius = nail.section().outer() / 2;
    Six support = CortexSupport.springs(shaft.material(), shaft.section(), bolt.diameter(), 1);
    int inside = frame.node(centre);
    for (int side = -1; side <= 1; side += 2) {
      Vector at = centre.plus(out.times(side * middle));
      int node = frame.node(at);
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
              List.of()));
      frame.link(Link.springs(onBone, node, at, axes, support));
    }
    frame.link(Link.springs(onNail, inside, centre, axes, joint(nail, bolt, support.along())));
  }

  private static Six joint(MetalNail nail, MetalNail.Bolt bolt, double axial) {
    if (bolt.fixed()) {
      return new Six(TIED, TIED, TIED, TIED, TIED, TIED);
    }
    double outer = nail.section().outer() / 2;
    double bore = nail.section().inner() / 2;
    double tilt = nail.material().young() * (Math.pow(outer, 3) - Math.pow(bore, 3)) / 3;
    return new Six(axial * SLIDING, TIED, TIED, 1, tilt, tilt);
  }

  private static BeamStiffness stiffness(MetalNail.Bolt bolt) {
    Material material =
        bolt.rigid()
            ? Material.isotropic(bolt.material().young() * RIGID, bolt.material().poisson())
            : bolt.material();
    return HollowCircle.solid(bolt.diameter()).of(material);
  }
}
