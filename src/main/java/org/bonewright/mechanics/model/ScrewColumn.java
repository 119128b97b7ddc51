package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.construct.Shaft;
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

  private final PlateScrew screw;
  private final PlateLine plate;
  private List<Integer> beams = List.of();
  private double free;

  private ScrewColumn(PlateScrew screw, PlateLine plate) {
    this.screw = screw;
    this.plate = plate;
  }

  /** Put a screw into a frame. */
  static ScrewColumn of(
      Frame frame,
      PlateScrew screw,
      PlateLine plate,
      Shaft shaft,
      BoneLine bone,
      StrutLine strut,
      Optional<OnlayLine> onlay) {
    ScrewColumn column = new ScrewColumn(screw, plate);
    double level = screw.at();
    Vector out = plate.outward();
    double middle = shaft.section().middleRadius();
    int last = column.head(frame);
    Vector from = plate.underside(level);
    List<Shank.Wall> walls = new ArrayList<>();
    if (screw.near() > 0) {
      walls.add(
          Shank.Wall.of(middle, shaft.material(), shaft.section(), bone.at(level), screw.near()));
    }
    strut.walls(level).forEach(walls::add);
    if (screw.far() > 0) {
      walls.add(
          Shank.Wall.of(-middle, shaft.material(), shaft.section(), bone.at(level), screw.far()));
    }
    onlay.flatMap(line -> line.wall(screw, plate.plate())).ifPresent(walls::add);
    column.beams =
        Shank.through(
            frame,
            last,
            from,
            new Shank.Passage(out, level, column.core(), screw.major(), List.of()),
            walls);
    column.free =
        walls.stream()
            .findFirst()
            .map(wall -> wall.at(out, level).minus(from).length())
            .orElse(0.0);
    return column;
  }

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

  private BeamStiffness core() {
    Material material = screw.rigid() ? screw.material().hardened() : screw.material();
    return HollowCircle.solid(screw.core()).of(material);
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
