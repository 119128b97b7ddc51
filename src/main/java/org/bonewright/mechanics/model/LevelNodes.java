package org.bonewright.mechanics.model;

import java.util.Collection;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Vector;

/** Nodes of a part that runs along the bone, one for each level, from proximal to distal. */
final class LevelNodes {

  private final NavigableMap<Double, Integer> nodes = new TreeMap<>();

  /**
   * Put the nodes into a frame.
   *
   * @param levels of the nodes in any order; one given twice counts once
   * @param point where the node of a level lies
   */
  LevelNodes(Frame frame, Collection<Double> levels, DoubleFunction<Vector> point) {
    for (double level : new TreeSet<>(levels)) {
      nodes.put(level, frame.node(point.apply(level)));
    }
  }

  /**
   * Return the node at a level.
   *
   * @throws IllegalArgumentException if there is none
   */
  int at(double level) {
    Integer node = nodes.get(level);
    if (node == null) {
      throw new IllegalArgumentException("no node at " + level);
    }
    return node;
  }

  /** Return whether there is a node at a level. */
  boolean has(double level) {
    return nodes.containsKey(level);
  }

  /** Do something with each two neighbouring levels, from proximal to distal. */
  void eachStretch(Stretch stretch) {
    Double before = null;
    for (double level : nodes.keySet()) {
      if (before != null) {
        stretch.between(before, level);
      }
      before = level;
    }
  }

  /** What is done between two levels. */
  interface Stretch {

    /** Do it from a level to the next one. */
    void between(double from, double to);
  }

  /** Return the first level. */
  double first() {
    return nodes.firstKey();
  }

  /** Return the last level. */
  double last() {
    return nodes.lastKey();
  }
}
