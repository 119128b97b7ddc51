package org.bonewright.mechanics.frame;

import java.util.List;

/** How the nodes of a frame move under one load. */
public final class Movements {

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
      return new Vector(0, 0, 0);
    }
    int start = places[node] * Link.SIX + from;
    return new Vector(values[start], values[start + 1], values[start + 2]);
  }

  /**
   * Return the movement of the second side of a link against its first, in the axes of the link:
   * along, away, across in mm, and about the same in rad.
   */
  public Six across(Link link) {
    double[] relative = new double[Link.SIX];
    add(relative, link, link.second(), 1);
    add(relative, link, link.first(), -1);
    return Six.of(relative);
  }

  /** Return the force on the second side of a link: N along, away, across, N·mm about the same. */
  public Six force(int index) {
    Link link = links.get(index);
    return link.stiffness().times(across(link));
  }

  private void add(double[] relative, Link link, int node, double sign) {
    if (places[node] < 0) {
      return;
    }
    double[][] reach = link.reach(nodes.get(node));
    for (int i = 0; i < Link.SIX; i++) {
      for (int j = 0; j < Link.SIX; j++) {
        relative[i] += sign * reach[i][j] * values[places[node] * Link.SIX + j];
      }
    }
  }
}
