package org.bonewright.mechanics.frame;

import java.util.List;

/** Forces and moments on the nodes of a frame, and pairs of them within its links. */
public final class Loads {

  private final List<Vector> nodes;
  private final int[] places;
  private final double[] values;

  Loads(List<Vector> nodes, int[] places) {
    this.nodes = nodes;
    this.places = places;
    this.values = new double[(nodes.size() - 1) * SixSquare.SIZE];
  }

  /**
   * Add a force and a moment on a node.
   *
   * @param force in N
   * @param moment in N·mm
   */
  public Loads add(int node, Vector force, Vector moment) {
    if (places[node] >= 0) {
      int at = places[node] * SixSquare.SIZE;
      values[at] += force.x();
      values[at + 1] += force.y();
      values[at + 2] += force.z();
      values[at + 3] += moment.x();
      values[at + 4] += moment.y();
      values[at + 5] += moment.z();
    }
    return this;
  }

  /**
   * Add a pair of forces at a point that two nodes reach: on the second side as given, on the first
   * side against it. Whether a link of the frame is there does not matter.
   *
   * @param link the point and the axes
   * @param pair along, away, across in N and about the same in N·mm, in the axes of the link
   */
  public Loads pair(Link link, Six pair) {
    Axes axes = link.axes();
    Vector force = axes.combine(pair.along(), pair.away(), pair.across());
    Vector moment = axes.combine(pair.aboutAlong(), pair.aboutAway(), pair.aboutAcross());
    side(link, link.second(), force, moment);
    side(link, link.first(), force.times(-1), moment.times(-1));
    return this;
  }

  private void side(Link link, int node, Vector force, Vector moment) {
    Vector arm = link.at().minus(nodes.get(node));
    add(node, force, moment.plus(arm.cross(force)));
  }

  double[] values() {
    return values;
  }
}
