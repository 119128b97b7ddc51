package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;

/** The nodes on the axis of the bone: its ends, the ends of the fragments, and every crossing. */
final class BoneLine {

  static final Vector ALONG = new Vector(0, 0, 1);

  /** A point on the axis of the bone, at the fracture. */
  static final Vector AXIS = new Vector(0, 0, 0);

  private static final Vector TOWARDS_PLATE = new Vector(1, 0, 0);

  private final LevelNodes proximal;
  private final LevelNodes distal;

  /**
   * Lay the bone into a frame.
   *
   * @param levels where something crosses it
   */
  BoneLine(Frame frame, FixedBone bone, List<Double> levels) {
    double half = bone.fracture().gap() / 2;
    List<Double> near = new ArrayList<>(List.of(-half - bone.shaft().proximal(), -half));
    List<Double> far = new ArrayList<>(List.of(half, half + bone.shaft().distal()));
    levels.forEach(level -> (level < 0 ? near : far).add(level));
    BeamStiffness stiffness = bone.shaft().section().of(bone.shaft().material());
    this.proximal = lay(frame, near, stiffness);
    this.distal = lay(frame, far, stiffness);
  }

  private static LevelNodes lay(Frame frame, List<Double> levels, BeamStiffness stiffness) {
    LevelNodes nodes = new LevelNodes(frame, levels, ALONG::times);
    nodes.eachStretch(
        (from, to) ->
            frame.link(
                Beams.link(
                    nodes.at(from),
                    nodes.at(to),
                    ALONG.times(from),
                    ALONG.times(to),
                    TOWARDS_PLATE,
                    List.of(new Beams.Piece(to - from, stiffness)),
                    List.of())));
    return nodes;
  }

  /** Return the node at a level that something crosses. */
  int at(double level) {
    return (level < 0 ? proximal : distal).at(level);
  }

  /** Return the node that is held. */
  int held() {
    return proximal.at(proximal.first());
  }

  /** Return the node that is loaded. */
  int loaded() {
    return distal.at(distal.last());
  }

  /** Return how far the loaded node lies beyond the centre of the fracture, in mm. */
  double reach() {
    return distal.last();
  }

  /** Return the end of the proximal fragment. */
  int proximalEnd() {
    return proximal.at(proximal.last());
  }

  /** Return the end of the distal fragment. */
  int distalEnd() {
    return distal.at(distal.first());
  }
}
