package org.bonewright.mechanics.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The banded factorisation against plain Gaussian elimination of the whole matrix. */
class BandedCholeskyTest {

  @Property(tries = 300)
  void it_solves_what_plain_elimination_solves(
      @ForAll @IntRange(min = 1, max = 40) int size,
      @ForAll @IntRange(min = 0, max = 12) int band,
      @ForAll long seed) {
    Random random = new Random(seed);
    double[][] full = positiveDefinite(size, band, random);
    double[] right = random.doubles(size, -1, 1).toArray();
    double[] solved = BandedCholesky.of(banded(full, band)).orElseThrow().solve(right);
    double[] plain = eliminate(full, right);
    double largest = Arrays.stream(plain).map(Math::abs).max().orElseThrow();
    assertThat(solved).containsExactly(plain, within(1e-8 * largest));
  }

  @Property(tries = 100)
  void one_factor_serves_any_number_of_right_sides_and_leaves_them_alone(
      @ForAll @IntRange(min = 1, max = 20) int size, @ForAll long seed) {
    Random random = new Random(seed);
    double[][] full = positiveDefinite(size, 3, random);
    BandedCholesky factor = BandedCholesky.of(banded(full, 3)).orElseThrow();
    double[] right = random.doubles(size, -1, 1).toArray();
    double[] kept = right.clone();
    double[] first = factor.solve(right);
    factor.solve(random.doubles(size, -1, 1).toArray());
    assertThat(right).containsExactly(kept);
    assertThat(factor.solve(right)).containsExactly(first);
  }

  /** A movement that would give energy back instead of taking it. */
  @Property(tries = 300)
  void it_refuses_a_matrix_that_is_not_positive_definite(
      @ForAll @IntRange(min = 1, max = 40) int size,
      @ForAll @IntRange(min = 0, max = 12) int band,
      @ForAll long seed) {
    Random random = new Random(seed);
    double[][] full = positiveDefinite(size, band, random);
    int row = random.nextInt(size);
    double[] unit = new double[size];
    unit[row] = 1;
    // What is left of this diagonal entry once all others are eliminated is 1 / inverse(row, row).
    double resistance = 1 / eliminate(full, unit)[row];
    full[row][row] -= resistance * (1 + random.nextDouble());
    assertThat(BandedCholesky.of(banded(full, band))).isEmpty();
  }

  /** Only among springs of like stiffness: a spread of a thousand can hide it in rounding. */
  @Property(tries = 300)
  void it_refuses_a_chain_of_like_springs_that_is_held_nowhere(
      @ForAll @IntRange(min = 2, max = 20) int size, @ForAll long seed) {
    double[][] full = chain(size, new Random(seed));
    assertThat(BandedCholesky.of(banded(full, 1))).isEmpty();
  }

  @Property(tries = 300)
  void it_takes_the_same_chain_once_one_end_is_held(
      @ForAll @IntRange(min = 2, max = 20) int size, @ForAll long seed) {
    double[][] full = chain(size, new Random(seed));
    full[0][0] += 1;
    assertThat(BandedCholesky.of(banded(full, 1))).isPresent();
  }

  private static double[][] chain(int size, Random random) {
    double[][] full = new double[size][size];
    for (int i = 1; i < size; i++) {
      double spring = random.nextDouble(1, 3);
      full[i][i] += spring;
      full[i - 1][i - 1] += spring;
      full[i][i - 1] -= spring;
      full[i - 1][i] -= spring;
    }
    return full;
  }

  /** The product of a random lower triangle with its transpose has the band of the triangle. */
  private static double[][] positiveDefinite(int size, int band, Random random) {
    double[][] lower = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = Math.max(0, i - band); j < i; j++) {
        lower[i][j] = random.nextDouble(-0.5, 0.5);
      }
      lower[i][i] = random.nextDouble(1, 3);
    }
    double[][] full = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        for (int k = 0; k <= Math.min(i, j); k++) {
          full[i][j] += lower[i][k] * lower[j][k];
        }
      }
    }
    return full;
  }

  private static double[][] banded(double[][] full, int band) {
    double[][] rows = new double[full.length][band + 1];
    for (int i = 0; i < full.length; i++) {
      for (int j = Math.max(0, i - band); j <= i; j++) {
        rows[i][j - i + band] = full[i][j];
      }
    }
    return rows;
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
