package org.bonewright.mechanics.frame;

import java.util.List;

/** How the nodes of a frame move under one load. */
public final class Movements {

  private static final Vector NONE = new Vector(0, 0, 0);

  private final List<Vector> nodes;
  private final List<Link> links;
  private final int[] places;
  private final double[] values;

  Movements(List<Vector> nodes, List<Link> links, int[] places, double[] values) {
    this.nodes = nodes;
    this.links = links;
    this.places = places;
    this.values = values;
  }

  /** Return how far a node moves, in mm. */
  public Vector shift(int node) {
    return three(node, 0);
  }

  /** Return how far a node turns, in rad. */
  public Vector turn(int node) {
    return three(node, 3);
  }

  private Vector three(int node, int from) {
    if (places[node] < 0) {
      return NONE;
    }
    int start = places[node] * SixSquare.SIZE + from;
    return new Vector(values[start], values[start + 1], values[start + 2]);
  }

  /**
   * Return the movement of the second side of a link against its first, in the axes of the link:
   * along, away, across in mm, and about the same in rad.
   */
  public Six across(Link link) {
    Vector apart = at(link, link.second()).minus(at(link, link.first()));
    Vector turned = turn(link.second()).minus(turn(link.first()));
    Axes axes = link.axes();
    return new Six(
        apart.dot(axes.along()),
        apart.dot(axes.away()),
        apart.dot(axes.across()),
        turned.dot(axes.along()),
        turned.dot(axes.away()),
        turned.dot(axes.across()));
  }

  /** Return how the point of a link moves as a part of one of its nodes. */
  private Vector at(Link link, int node) {
    Vector arm = link.at().minus(nodes.get(node));
    return shift(node).plus(turn(node).cross(arm));
  }

  /** Return the force on the second side of a link: N along, away, across, N·mm about the same. */
  public Six force(int index) {
    Link link = links.get(index);
    return link.stiffness().times(across(link));
  }
}
