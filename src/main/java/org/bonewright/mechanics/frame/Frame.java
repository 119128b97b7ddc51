package org.bonewright.mechanics.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Nodes and links, with one node held. The order in which they were added does not matter. */
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
    Elimination order = Elimination.of(nodes.size() - 1, pairs(held));
    int[] places = new int[nodes.size()];
    for (int node = 0; node < places.length; node++) {
      places[node] = node == held ? -1 : order.place(free(node, held));
    }
    double[] matrix = new double[order.blocks() * BlockCholesky.BLOCK];
    for (Link link : links) {
      add(matrix, order, link, places);
    }
    return BlockCholesky.of(order, matrix)
        .map(factor -> new SolvedFrame(List.copyOf(nodes), List.copyOf(links), places, factor));
  }

  /** Return the index of a node among those that are free. */
  private static int free(int node, int held) {
    return node < held ? node : node - 1;
  }

  private int[] pairs(int held) {
    int[] pairs = new int[2 * links.size()];
    int next = 0;
    for (Link link : links) {
      if (link.first() != held && link.second() != held) {
        pairs[next++] = free(link.first(), held);
        pairs[next++] = free(link.second(), held);
      }
    }
    return Arrays.copyOf(pairs, next);
  }

  private void add(double[] matrix, Elimination order, Link link, int[] places) {
    int first = places[link.first()];
    int second = places[link.second()];
    double[] atPoint = link.inSpace();
    Vector one = link.at().minus(nodes.get(link.first()));
    Vector two = link.at().minus(nodes.get(link.second()));
    if (first >= 0) {
      add(matrix, order.block(first, first), atPoint, one, one, 1);
    }
    if (second >= 0) {
      add(matrix, order.block(second, second), atPoint, two, two, 1);
    }
    if (first > second && second >= 0) {
      add(matrix, order.block(first, second), atPoint, one, two, -1);
    } else if (second > first && first >= 0) {
      add(matrix, order.block(second, first), atPoint, two, one, -1);
    }
  }

  /**
   * Add to a block what a stiffness at the end of two arms is at their nodes: a force at the end of
   * an arm is also a moment, arm × force, at its node.
   */
  private static void add(
      double[] matrix, int block, double[] stiffness, Vector row, Vector column, double sign) {
    double[] k = stiffness.clone();
    for (int i = 0; i < BlockCholesky.BLOCK; i += BlockCholesky.SIX) {
      reach(k, i, 1, column);
    }
    for (int i = 0; i < BlockCholesky.SIX; i++) {
      reach(k, i, BlockCholesky.SIX, row);
    }
    int to = block * BlockCholesky.BLOCK;
    for (int i = 0; i < BlockCholesky.BLOCK; i++) {
      matrix[to + i] += sign * k[i];
    }
  }

  /** Add arm × force to the moment of six numbers that stand this far apart. */
  private static void reach(double[] k, int from, int apart, Vector arm) {
    double x = k[from];
    double y = k[from + apart];
    double z = k[from + 2 * apart];
    k[from + 3 * apart] += arm.y() * z - arm.z() * y;
    k[from + 4 * apart] += arm.z() * x - arm.x() * z;
    k[from + 5 * apart] += arm.x() * y - arm.y() * x;
  }
}
