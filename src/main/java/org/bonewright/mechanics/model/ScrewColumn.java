package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/**
 * A screw: from the underside of the plate across the free length to the near cortex, through the
 * walls of a strut where it meets one, to the far cortex.
 */
final class ScrewColumn {

  /** A joint that gives nothing, in N/mm. */
  private static final double TIED = 1e8;

  /** Keeps a head that can tilt from turning without any resistance; too soft to count. */
  private static final double FREE = 1;

  /** How much stiffer a screw without bending is than a real one. */
  private static final double RIGID = 1e4;

  private final PlateScrew screw;
  private final PlateLine plate;
  private final List<Integer> beams = new ArrayList<>();
  private double free;

  private ScrewColumn(PlateScrew screw, PlateLine plate) {
    this.screw = screw;
    this.plate = plate;
  }

  /** Put a screw into a frame. */
  static ScrewColumn of(
      Frame frame, PlateScrew screw, PlateLine plate, Shaft shaft, BoneLine bone, StrutLine strut) {
    ScrewColumn column = new ScrewColumn(screw, plate);
    double level = screw.at();
    Vector out = plate.outward();
    double middle = shaft.section().middleRadius();
    int last = column.head(frame);
    Vector from = plate.underside(level);
    List<Wall> walls = new ArrayList<>();
    if (screw.near() > 0) {
      walls.add(new Wall(middle, shaft.material(), shaft.section(), bone.at(level), screw.near()));
    }
    strut.walls(level).forEach(walls::add);
    if (screw.far() > 0) {
      walls.add(new Wall(-middle, shaft.material(), shaft.section(), bone.at(level), screw.far()));
    }
    for (Wall wall : walls) {
      Vector at = out.times(wall.radius()).plus(BoneLine.ALONG.times(level));
      int node = frame.node(at);
      column.free = column.beams.isEmpty() ? at.minus(from).length() : column.free;
      column.beams.add(frame.link(column.beam(last, node, from, at)));
      frame.link(
          Link.springs(
              wall.node(),
              node,
              at,
              Turned.screw(out),
              CortexSupport.springs(wall.material(), wall.tube(), screw.major(), wall.share())));
      last = node;
      from = at;
    }
    return column;
  }

  /**
   * A wall that the screw passes.
   *
   * @param radius how far from the axis towards the plate its middle lies, in mm
   * @param material of the wall
   * @param tube what it is the wall of
   * @param node the node on the axis that carries it
   * @param share share of the thread that it holds
   */
  record Wall(double radius, Material material, HollowCircle tube, int node, double share) {}

  /** Return the node from which the screw starts: the plate itself, or a joint under it. */
  private int head(Frame frame) {
    int node = plate.node(screw.at());
    if (screw.head() instanceof Head.Locked) {
      return node;
    }
    int joint = frame.node(plate.underside(screw.at()));
    frame.link(
        Link.springs(
            node,
            joint,
            plate.underside(screw.at()),
            Turned.screw(plate.outward()),
            new Six(TIED, TIED, TIED, FREE, FREE, FREE)));
    return joint;
  }

  private Link beam(int first, int second, Vector from, Vector to) {
    Material material =
        screw.rigid()
            ? Material.isotropic(screw.material().young() * RIGID, screw.material().poisson())
            : screw.material();
    BeamStiffness stiffness = HollowCircle.solid(screw.core()).of(material);
    return Beams.link(
        first,
        second,
        from,
        to,
        BoneLine.ALONG,
        List.of(new Beams.Piece(to.minus(from).length(), stiffness)),
        List.of());
  }

  /** Return the screw. */
  PlateScrew screw() {
    return screw;
  }

  /** Return the length in mm between the plate and the middle of the near cortex. */
  double free() {
    return free;
  }

  /** Return its plate. */
  PlateLine plate() {
    return plate;
  }

  /**
   * Return the index of the beam between plate and near cortex; nothing where it holds in no wall.
   */
  OptionalInt neck() {
    return beams.isEmpty() ? OptionalInt.empty() : OptionalInt.of(beams.get(0));
  }
}
