package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;

/** A plate: a node at each screw, beams between them that give more at every empty hole. */
final class PlateLine {

  /** Length that a locked head stiffens on either side, in core diameters of the screw. */
  private static final double LOCKED_STIFFENS = 0.25;

  /** Length that a pressed head stiffens on either side, in diameters of the hole. */
  private static final double PRESSED_STIFFENS = 0.4;

  /**
   * A stretch of plate between two neighbouring screws.
   *
   * @param from level of the proximal screw
   * @param to level of the distal screw
   * @param link index of its link
   */
  record Stretch(double from, double to, int link) {}

  private final MetalPlate plate;
  private final Vector outward;
  private final double axis;
  private final LevelNodes nodes;
  private final List<Stretch> stretches = new ArrayList<>();

  /**
   * Lay a plate into a frame.
   *
   * @param outer outer diameter of the bone in mm
   * @param screws the screws of this plate
   */
  PlateLine(Frame frame, MetalPlate plate, double outer, List<PlateScrew> screws) {
    this.plate = plate;
    this.outward = Turned.outward(plate.azimuth());
    this.axis = plate.axisFrom(outer);
    NavigableMap<Double, PlateScrew> byLevel = new TreeMap<>();
    screws.forEach(screw -> byLevel.put(screw.at(), screw));
    this.nodes = new LevelNodes(frame, byLevel.keySet(), this::point);
    PlateScrew before = null;
    for (PlateScrew screw : byLevel.values()) {
      if (before != null) {
        stretches.add(stretch(frame, before, screw));
      }
      before = screw;
    }
  }

  private Stretch stretch(Frame frame, PlateScrew from, PlateScrew to) {
    double length = to.at() - from.at();
    double near = Math.min(stiff(from), length / 2);
    double far = Math.min(stiff(to), length / 2);
    BeamStiffness solid = plate.section().of(plate.material());
    // A rigid end next to a rigid end would leave nothing that gives.
    double between = Math.max(length - near - far, length * LEAST_FREE);
    List<Beams.Piece> pieces =
        List.of(
            new Beams.Piece((length - between) * share(near, far), BeamStiffness.RIGID),
            new Beams.Piece(between, solid),
            new Beams.Piece((length - between) * share(far, near), BeamStiffness.RIGID));
    List<Beams.Soft> soft = new ArrayList<>();
    for (double hole : plate.holes()) {
      if (hole > from.at() && hole < to.at()) {
        soft.add(new Beams.Soft(to.at() - hole, plate.hole().give(plate.material())));
      }
    }
    addLoose(soft, from, length);
    addLoose(soft, to, 0);
    int link =
        frame.link(
            Beams.link(
                node(from.at()),
                node(to.at()),
                point(from.at()),
                point(to.at()),
                outward,
                pieces,
                soft));
    return new Stretch(from.at(), to.at(), link);
  }

  private static final double LEAST_FREE = 0.05;

  private static double share(double one, double other) {
    return one + other == 0 ? 0.5 : one / (one + other);
  }

  /** A hole whose screw does not press the plate gives as an empty one; half on either side. */
  private void addLoose(List<Beams.Soft> soft, PlateScrew screw, double fromFar) {
    if (screw.head() instanceof Head.Pressed pressed && pressed.force() <= 0) {
      soft.add(new Beams.Soft(fromFar, plate.hole().give(plate.material()).share(0.5)));
    }
  }

  private double stiff(PlateScrew screw) {
    if (!screw.stiffens()) {
      return 0;
    }
    if (screw.head() instanceof Head.Pressed pressed) {
      return pressed.force() > 0 ? PRESSED_STIFFENS * plate.holeDiameter() : 0;
    }
    return LOCKED_STIFFENS * screw.core();
  }

  /** Return the plate. */
  MetalPlate plate() {
    return plate;
  }

  /** Return the direction from the bone to the plate. */
  Vector outward() {
    return outward;
  }

  /** Return a point on the axis of the plate. */
  Vector point(double level) {
    return outward.times(axis).plus(BoneLine.ALONG.times(level));
  }

  /** Return the point on its underside at a level. */
  Vector underside(double level) {
    return outward.times(axis - plate.section().thickness() / 2).plus(BoneLine.ALONG.times(level));
  }

  /** Return the node at a screw. */
  int node(double level) {
    return nodes.at(level);
  }

  /** Return the stretches from proximal to distal. */
  List<Stretch> stretches() {
    return stretches;
  }
}
