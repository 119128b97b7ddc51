package org.bonewright.mechanics.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The factorisation by blocks against plain Gaussian elimination of the whole matrix. */
class BlockCholeskyTest {

  private static final int SIX = BlockCholesky.SIX;

  @Property(tries = 300)
  void it_solves_what_plain_elimination_solves(
      @ForAll @IntRange(min = 1, max = 12) int nodes, @ForAll long seed) {
    Net net = new Net(nodes, new Random(seed));
    double[][] full = net.positiveDefinite();
    double[] right = net.random.doubles((long) nodes * SIX, -1, 1).toArray();
    double[] solved = net.solved(net.factor(full), right);
    double[] plain = eliminate(full, right);
    double largest = Arrays.stream(plain).map(Math::abs).max().orElseThrow();
    assertThat(solved).containsExactly(plain, within(1e-8 * largest));
  }

  @Property(tries = 100)
  void half_a_solution_of_two_right_sides_gives_the_work_of_one_on_the_other(
      @ForAll @IntRange(min = 1, max = 8) int nodes, @ForAll long seed) {
    Net net = new Net(nodes, new Random(seed));
    double[][] full = net.positiveDefinite();
    int rows = nodes * SIX;
    double[] one = net.random.doubles(rows, -1, 1).toArray();
    double[] other = new double[rows];
    other[net.random.nextInt(rows)] = 1; // mostly zeros, as the loads of a point are
    BlockCholesky factor = net.factor(full);
    double[] halves = new double[2 * rows];
    for (int row = 0; row < rows; row++) {
      halves[2 * net.place(row)] = one[row];
      halves[2 * net.place(row) + 1] = other[row];
    }
    factor.forward(halves, 2);
    double work = 0;
    double expected = 0;
    double[] moved = eliminate(full, one);
    for (int row = 0; row < rows; row++) {
      work += halves[2 * row] * halves[2 * row + 1];
      expected += other[row] * moved[row];
    }
    assertThat(work).isCloseTo(expected, within(1e-9));
  }

  /** A movement that would give energy back instead of taking it. */
  @Property(tries = 300)
  void it_refuses_a_matrix_that_is_not_positive_definite(
      @ForAll @IntRange(min = 1, max = 12) int nodes, @ForAll long seed) {
    Net net = new Net(nodes, new Random(seed));
    double[][] full = net.positiveDefinite();
    int row = net.random.nextInt(nodes * SIX);
    double[] unit = new double[nodes * SIX];
    unit[row] = 1;
    // What is left of this diagonal entry once all others are eliminated is 1 / inverse(row, row).
    double resistance = 1 / eliminate(full, unit)[row];
    full[row][row] -= resistance * (1 + net.random.nextDouble());
    assertThat(BlockCholesky.of(net.order, net.blocks(full))).isEmpty();
  }

  /** Only among springs of like stiffness: a spread of a thousand can hide it in rounding. */
  @Property(tries = 300)
  void it_refuses_a_chain_of_like_springs_that_is_held_nowhere(
      @ForAll @IntRange(min = 2, max = 20) int nodes, @ForAll long seed) {
    Net net = new Net(nodes, new Random(seed));
    assertThat(BlockCholesky.of(net.order, net.blocks(net.chain()))).isEmpty();
  }

  @Property(tries = 300)
  void it_takes_the_same_chain_once_one_node_is_held(
      @ForAll @IntRange(min = 2, max = 20) int nodes, @ForAll long seed) {
    Net net = new Net(nodes, new Random(seed));
    double[][] full = net.chain();
    for (int i = 0; i < SIX; i++) {
      full[i][i] += 1;
    }
    assertThat(BlockCholesky.of(net.order, net.blocks(full))).isPresent();
  }

  @Property(tries = 200)
  void the_order_takes_every_node_once_and_keeps_every_pair(
      @ForAll @IntRange(min = 1, max = 20) int nodes, @ForAll long seed) {
    Net net = new Net(nodes, new Random(seed));
    boolean[] taken = new boolean[nodes];
    for (int node = 0; node < nodes; node++) {
      assertThat(taken[net.order.place(node)]).isFalse();
      taken[net.order.place(node)] = true;
    }
    for (int[] pair : net.pairs) {
      int one = net.order.place(pair[0]);
      int other = net.order.place(pair[1]);
      assertThat(net.order.later(Math.min(one, other))).contains(Math.max(one, other));
    }
  }

  /** Nodes in a chain with a few more pairs, and the order that was chosen for them. */
  private static final class Net {

    private final int nodes;
    private final Random random;
    private final List<int[]> pairs = new ArrayList<>();
    private final Elimination order;

    Net(int nodes, Random random) {
      this.nodes = nodes;
      this.random = random;
      for (int node = 1; node < nodes; node++) {
        pairs.add(new int[] {node - 1, node});
        int other = random.nextInt(nodes);
        if (other != node) {
          pairs.add(new int[] {node, other});
        }
      }
      this.order = Elimination.of(nodes, pairs.stream().flatMapToInt(Arrays::stream).toArray());
    }

    int place(int row) {
      return order.place(row / SIX) * SIX + row % SIX;
    }

    BlockCholesky factor(double[][] full) {
      return BlockCholesky.of(order, blocks(full)).orElseThrow();
    }

    double[] solved(BlockCholesky factor, double[] right) {
      double[] x = new double[right.length];
      for (int row = 0; row < right.length; row++) {
        x[place(row)] = right[row];
      }
      factor.solve(x);
      double[] solution = new double[right.length];
      Arrays.setAll(solution, row -> x[place(row)]);
      return solution;
    }

    /** Each pair adds the square of random rows over both its nodes; each node some of its own. */
    double[][] positiveDefinite() {
      double[][] full = new double[nodes * SIX][nodes * SIX];
      for (int row = 0; row < full.length; row++) {
        full[row][row] = random.nextDouble(0.5, 1.5);
      }
      for (int[] pair : pairs) {
        double[] v = random.doubles(2 * SIX, -1, 1).toArray();
        for (int i = 0; i < 2 * SIX; i++) {
          for (int j = 0; j < 2 * SIX; j++) {
            full[pair[i / SIX] * SIX + i % SIX][pair[j / SIX] * SIX + j % SIX] += v[i] * v[j];
          }
        }
      }
      return full;
    }

    /** Six springs between each node and the next. */
    double[][] chain() {
      double[][] full = new double[nodes * SIX][nodes * SIX];
      for (int row = SIX; row < full.length; row++) {
        double spring = random.nextDouble(1, 3);
        full[row][row] += spring;
        full[row - SIX][row - SIX] += spring;
        full[row][row - SIX] -= spring;
        full[row - SIX][row] -= spring;
      }
      return full;
    }

    double[] blocks(double[][] full) {
      double[] blocks = new double[order.blocks() * BlockCholesky.BLOCK];
      for (int row = 0; row < full.length; row++) {
        for (int column = 0; column < full.length; column++) {
          int below = order.place(row / SIX);
          int above = order.place(column / SIX);
          if (full[row][column] != 0 && below >= above) {
            int block = order.block(below, above) * BlockCholesky.BLOCK;
            blocks[block + row % SIX * SIX + column % SIX] = full[row][column];
          }
        }
      }
      return blocks;
    }
  }

  /** Gaussian elimination with the largest pivot of each column. */
  private static double[] eliminate(double[][] full, double[] right) {
    int size = right.length;
    double[][] rows = new double[size][];
    for (int i = 0; i < size; i++) {
      rows[i] = Arrays.copyOf(full[i], size + 1);
      rows[i][size] = right[i];
    }
    for (int column = 0; column < size; column++) {
      int pivot = column;
      for (int i = column + 1; i < size; i++) {
        pivot = Math.abs(rows[i][column]) > Math.abs(rows[pivot][column]) ? i : pivot;
      }
      double[] swapped = rows[pivot];
      rows[pivot] = rows[column];
      rows[column] = swapped;
      for (int i = column + 1; i < size; i++) {
        double share = rows[i][column] / rows[column][column];
        for (int k = column; k <= size; k++) {
          rows[i][k] -= share * rows[column][k];
        }
      }
    }
    double[] solution = new double[size];
    for (int i = size - 1; i >= 0; i--) {
      double sum = rows[i][size];
      for (int k = i + 1; k < size; k++) {
        sum -= rows[i][k] * solution[k];
      }
      solution[i] = sum / rows[i][i];
    }
    return solution;
  }
}
