package org.bonewright.mechanics.frame;

import java.util.List;

/** A frame that is ready for loads. */
public final class SolvedFrame {

  private final List<Vector> nodes;
  private final List<Link> links;
  private final int[] places;
  private final BlockCholesky factor;

  SolvedFrame(List<Vector> nodes, List<Link> links, int[] places, BlockCholesky factor) {
    this.nodes = nodes;
    this.links = links;
    this.places = places;
    this.factor = factor;
  }

  /** Return a load of nothing, to add to. */
  public Loads loads() {
    return new Loads(nodes, places);
  }

  /** Return a link. */
  public Link link(int index) {
    return links.get(index);
  }

  /** Return how every node moves under a load; the load cannot be used again. */
  public Movements under(Loads loads) {
    double[] values = loads.values();
    factor.solve(values);
    return new Movements(nodes, links, places, values);
  }

  /**
   * Return how points that two nodes reach move apart under pairs of forces at such points.
   *
   * @param points their places and axes; whether a link of the frame is there does not matter
   * @return for each point six rows, for each pair of 1 N or 1 N·mm a column: mm and rad; symmetric
   */
  public double[][] give(List<Link> points) {
    int many = points.size() * SixSquare.SIZE;
    double[] all = new double[(nodes.size() - 1) * SixSquare.SIZE * many];
    for (int i = 0; i < many; i++) {
      Loads unit = loads().pair(points.get(i / SixSquare.SIZE), Six.unit(i % SixSquare.SIZE));
      for (int row = 0; row < unit.values().length; row++) {
        all[row * many + i] = unit.values()[row];
      }
    }
    factor.forward(all, many);
    double[][] give = new double[many][many];
    for (int from = 0; from < all.length; from += many) {
      for (int i = 0; i < many; i++) {
        double factor = all[from + i];
        if (factor != 0) {
          double[] row = give[i];
          for (int j = 0; j <= i; j++) {
            row[j] += factor * all[from + j];
          }
        }
      }
    }
    for (int i = 0; i < many; i++) {
      for (int j = 0; j < i; j++) {
        give[j][i] = give[i][j];
      }
    }
    return give;
  }
}
