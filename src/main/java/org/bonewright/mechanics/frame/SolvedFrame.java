package org.bonewright.mechanics.frame;

import java.util.List;

/** A frame that is ready for loads. */
public final class SolvedFrame {

  private final List<Vector> nodes;
  private final List<Link> links;
  private final int[] places;
  private final BandedCholesky factor;

  SolvedFrame(List<Vector> nodes, List<Link> links, int[] places, BandedCholesky factor) {
    this.nodes = nodes;
    this.links = links;
    this.places = places;
    this.factor = factor;
  }

  /** Return a load of nothing, to add to. */
  public Loads loads() {
    return new Loads(nodes, links, places);
  }

  /** Return the stiffness of a link, 6 × 6, in its axes. */
  public SixSquare stiffness(int link) {
    return links.get(link).stiffness();
  }

  /** Return how every node moves under a load. */
  public Movements under(Loads loads) {
    return new Movements(nodes, links, places, factor.solve(loads.values()));
  }
}
