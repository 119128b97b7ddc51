package org.bonewright.mechanics.frame;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The order in which the nodes of a frame are eliminated, and the blocks of six by six that the
 * factor needs then. Next comes always a node that is tied to the fewest others (minimum degree:
 * George and Liu, SIAM Review 1989, from memory); of several, the one that was added first. So the
 * nodes within a screw go first, and what is left is a narrow ladder along the bone.
 */
final class Elimination {

  private final int[] places;
  private final int[][] later;
  private final int[] blocks;
  private final int count;

  private Elimination(int[] places, int[][] later) {
    this.places = places;
    this.later = later;
    int size = places.length;
    this.blocks = new int[size * size];
    int next = 0;
    for (int step = 0; step < size; step++) {
      blocks[step * size + step] = next++;
      for (int row : later[step]) {
        blocks[row * size + step] = next++;
      }
    }
    this.count = next;
  }

  /**
   * Choose the order.
   *
   * @param size number of nodes
   * @param pairs two nodes that are tied, and again two, and so on
   */
  static Elimination of(int size, int[] pairs) {
    BitSet[] ties = new BitSet[size];
    for (int node = 0; node < size; node++) {
      ties[node] = new BitSet(size);
    }
    for (int i = 0; i < pairs.length; i += 2) {
      ties[pairs[i]].set(pairs[i + 1]);
      ties[pairs[i + 1]].set(pairs[i]);
    }
    int[] degrees = new int[size];
    Arrays.setAll(degrees, node -> ties[node].cardinality());
    int[] places = new int[size];
    int[][] later = new int[size][];
    for (int step = 0; step < size; step++) {
      int node = fewest(degrees);
      places[node] = step;
      later[step] = members(ties[node], degrees[node]);
      degrees[node] = Integer.MAX_VALUE; // is out of the way from now on
      for (int other : later[step]) {
        ties[other].or(ties[node]);
        ties[other].clear(node);
        ties[other].clear(other);
        degrees[other] = ties[other].cardinality();
      }
    }
    for (int[] nodes : later) {
      for (int i = 0; i < nodes.length; i++) {
        nodes[i] = places[nodes[i]];
      }
      Arrays.sort(nodes);
    }
    return new Elimination(places, later);
  }

  private static int fewest(int[] degrees) {
    int found = 0;
    for (int node = 1; node < degrees.length; node++) {
      if (degrees[node] < degrees[found]) {
        found = node;
      }
    }
    return found;
  }

  private static int[] members(BitSet set, int size) {
    int[] members = new int[size];
    int next = 0;
    for (int node = set.nextSetBit(0); node >= 0; node = set.nextSetBit(node + 1)) {
      members[next++] = node;
    }
    return members;
  }

  /** Return the number of nodes. */
  int size() {
    return places.length;
  }

  /** Return the step at which a node is eliminated. */
  int place(int node) {
    return places[node];
  }

  /** Return the later steps whose nodes are tied to that of a step, in order. */
  int[] later(int step) {
    return later[step];
  }

  /** Return the number of blocks. */
  int blocks() {
    return count;
  }

  /** Return the index of the block of two steps, the later one or the same as its row. */
  int block(int row, int column) {
    return blocks[row * places.length + column];
  }
}
