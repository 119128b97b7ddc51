package org.bonewright.mechanics.frame;

import java.util.List;

/** Forces and moments on the nodes of a frame, and pairs of them within its links. */
public final class Loads {

  private final List<Vector> nodes;
  private final List<Link> links;
  private final int[] places;
  private final double[] values;

  Loads(List<Vector> nodes, List<Link> links, int[] places) {
    this.nodes = nodes;
    this.links = links;
    this.places = places;
    this.values = new double[(nodes.size() - 1) * Link.SIX];
  }

  /**
   * Add a force and a moment on a node.
   *
   * @param force in N
   * @param moment in N·mm
   */
  public Loads add(int node, Vector force, Vector moment) {
    double[] six = {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
    add(node, six, 1);
    return this;
  }

  /**
   * Add a pair of forces at the point of a link: on its second side as given, on its first side
   * against it.
   *
   * @param pair along, away, across in N and about the same in N·mm, in the axes of the link
   */
  public Loads pair(int link, Six pair) {
    return pair(links.get(link), pair);
  }

  /** Add a pair of forces at a point that two nodes reach, whether or not a link is there. */
  public Loads pair(Link link, Six pair) {
    add(link.second(), onNode(link, link.second(), pair), 1);
    add(link.first(), onNode(link, link.first(), pair), -1);
    return this;
  }

  private double[] onNode(Link link, int node, Six pair) {
    double[][] reach = link.reach(nodes.get(node));
    double[] six = new double[Link.SIX];
    for (int i = 0; i < Link.SIX; i++) {
      for (int j = 0; j < Link.SIX; j++) {
        six[j] += reach[i][j] * pair.get(i);
      }
    }
    return six;
  }

  private void add(int node, double[] six, double sign) {
    if (places[node] >= 0) {
      for (int i = 0; i < Link.SIX; i++) {
        values[places[node] * Link.SIX + i] += sign * six[i];
      }
    }
  }

  double[] values() {
    return values;
  }
}
