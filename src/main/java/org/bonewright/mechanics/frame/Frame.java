package org.bonewright.mechanics.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Nodes and links, with one node held. Nodes are numbered along z for the solver, so that the
 * matrix has a narrow band whatever the order in which they were added.
 */
public final class Frame {

  private final List<Vector> nodes = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();

  /** Add a node and return its index. */
  public int node(Vector at) {
    nodes.add(at);
    return nodes.size() - 1;
  }

  /** Add a link and return its index. */
  public int link(Link link) {
    if (link.first() < 0 || link.second() >= nodes.size() || link.first() == link.second()) {
      throw new IllegalArgumentException("no such pair of nodes");
    }
    links.add(link);
    return links.size() - 1;
  }

  /** Return where a node is. */
  public Vector at(int node) {
    return nodes.get(node);
  }

  /**
   * Hold one node and factor the rest.
   *
   * @param held index of the node that cannot move
   * @return empty if something can move without resistance
   */
  public Optional<SolvedFrame> hold(int held) {
    int[] places = places(held);
    int band = 0;
    for (Link link : links) {
      if (places[link.first()] >= 0 && places[link.second()] >= 0) {
        int apart = Math.abs(places[link.first()] - places[link.second()]);
        band = Math.max(band, (apart + 1) * Link.SIX - 1);
      }
    }
    band = Math.max(band, Link.SIX - 1);
    double[][] matrix = new double[(nodes.size() - 1) * Link.SIX][band + 1];
    for (Link link : links) {
      add(matrix, band, link, places);
    }
    return BandedCholesky.of(matrix)
        .map(factor -> new SolvedFrame(List.copyOf(nodes), List.copyOf(links), places, factor));
  }

  /** Return the place of each node among the equations; -1 for the one that is held. */
  private int[] places(int held) {
    int[] places = new int[nodes.size()];
    List<Integer> order =
        IntStream.range(0, nodes.size())
            .filter(node -> node != held)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer node) -> nodes.get(node).z()))
            .toList();
    places[held] = -1;
    for (int i = 0; i < order.size(); i++) {
      places[order.get(i)] = i;
    }
    return places;
  }

  private void add(double[][] matrix, int band, Link link, int[] places) {
    int[] ends = {link.first(), link.second()};
    double[] signs = {-1, 1};
    for (int a = 0; a < 2; a++) {
      double[][] left = link.reach(nodes.get(ends[a]));
      for (int b = 0; b < 2; b++) {
        if (places[ends[a]] < 0 || places[ends[b]] < 0) {
          continue;
        }
        double[][] right = link.reach(nodes.get(ends[b]));
        double sign = signs[a] * signs[b];
        add(matrix, band, places[ends[a]], places[ends[b]], sign, left, link.stiffness(), right);
      }
    }
  }

  private static void add(
      double[][] matrix,
      int band,
      int rowNode,
      int columnNode,
      double sign,
      double[][] left,
      SixSquare stiffness,
      double[][] right) {
    for (int i = 0; i < Link.SIX; i++) {
      for (int j = 0; j < Link.SIX; j++) {
        int row = rowNode * Link.SIX + i;
        int column = columnNode * Link.SIX + j;
        if (column > row) {
          continue;
        }
        double sum = 0;
        for (int p = 0; p < Link.SIX; p++) {
          for (int q = 0; q < Link.SIX; q++) {
            sum += left[p][i] * stiffness.get(p, q) * right[q][j];
          }
        }
        matrix[row][column - row + band] += sign * sum;
      }
    }
  }
}
