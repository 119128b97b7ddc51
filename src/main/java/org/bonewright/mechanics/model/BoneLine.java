package org.bonewright.mechanics.model;

import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;

/** The nodes on the axis of the bone: its ends, the ends of the fragments, and every crossing. */
final class BoneLine {

  static final Vector ALONG = new Vector(0, 0, 1);
  private static final Vector TOWARDS_PLATE = new Vector(1, 0, 0);

  private final NavigableMap<Double, Integer> proximal = new TreeMap<>();
  private final NavigableMap<Double, Integer> distal = new TreeMap<>();

  /**
   * Lay the bone into a frame.
   *
   * @param levels where something crosses it
   */
  BoneLine(Frame frame, FixedBone bone, List<Double> levels) {
    double half = bone.fracture().gap() / 2;
    proximal.put(-half - bone.shaft().proximal(), 0);
    proximal.put(-half, 0);
    distal.put(half, 0);
    distal.put(half + bone.shaft().distal(), 0);
    levels.forEach(level -> (level < 0 ? proximal : distal).put(level, 0));
    BeamStiffness stiffness = bone.shaft().section().of(bone.shaft().material());
    lay(frame, proximal, stiffness);
    lay(frame, distal, stiffness);
  }

  private static void lay(
      Frame frame, NavigableMap<Double, Integer> nodes, BeamStiffness stiffness) {
    nodes.replaceAll((level, none) -> frame.node(ALONG.times(level)));
    Double before = null;
    for (double level : nodes.keySet()) {
      if (before != null) {
        frame.link(
            Beams.link(
                nodes.get(before),
                nodes.get(level),
                ALONG.times(before),
                ALONG.times(level),
                TOWARDS_PLATE,
                List.of(new Beams.Piece(level - before, stiffness)),
                List.of()));
      }
      before = level;
    }
  }

  /** Return the node at a level that something crosses. */
  int at(double level) {
    Integer node = (level < 0 ? proximal : distal).get(level);
    if (node == null) {
      throw new IllegalArgumentException("nothing crosses the bone at " + level);
    }
    return node;
  }

  /** Return the node that is held. */
  int held() {
    return proximal.firstEntry().getValue();
  }

  /** Return the node that is loaded. */
  int loaded() {
    return distal.lastEntry().getValue();
  }

  /** Return how far the loaded node lies beyond the centre of the fracture, in mm. */
  double reach() {
    return distal.lastKey();
  }

  /** Return the end of the proximal fragment. */
  int proximalEnd() {
    return proximal.lastEntry().getValue();
  }

  /** Return the end of the distal fragment. */
  int distalEnd() {
    return distal.firstEntry().getValue();
  }
}
