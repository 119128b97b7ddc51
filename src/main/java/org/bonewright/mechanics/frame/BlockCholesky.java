package org.bonewright.mechanics.frame;

import java.util.Optional;

/**
 * The Cholesky factor of a symmetric positive definite matrix of six rows for each node, of which
 * only the blocks of tied nodes are kept. Made once for a matrix; solves for any number of right
 * sides. Right-looking, after Golub and Van Loan, Matrix Computations, section 4.2 (from memory).
 *
 * <p>A block is 36 numbers, row by row, in one array with all others: the loops here are what a
 * construct costs.
 */
final class BlockCholesky {

  static final int SIX = 6;
  static final int BLOCK = SIX * SIX;

  /** What is left of a diagonal entry below this share of it is rounding, not resistance. */
  private static final double SMALLEST = 1e-13;

  private final Elimination order;
  private final double[] factor;

  private BlockCholesky(Elimination order, double[] factor) {
    this.order = order;
    this.factor = factor;
  }

  /**
   * Factor a matrix.
   *
   * @param order its blocks
   * @param matrix their numbers; is overwritten
   * @return empty if the matrix is not positive definite: something can move without resistance
   */
  static Optional<BlockCholesky> of(Elimination order, double[] matrix) {
    double[] least = new double[order.size() * SIX];
    for (int row = 0; row < least.length; row++) {
      int block = order.block(row / SIX, row / SIX) * BLOCK;
      least[row] = matrix[block + row % SIX * (SIX + 1)] * SMALLEST;
    }
    for (int step = 0; step < order.size(); step++) {
      int own = order.block(step, step) * BLOCK;
      if (!factor(matrix, own, least, step * SIX)) {
        return Optional.empty();
      }
      int[] later = order.later(step);
      for (int i = 0; i < later.length; i++) {
        int left = order.block(later[i], step) * BLOCK;
        divide(matrix, left, own);
        for (int j = 0; j <= i; j++) {
          int right = order.block(later[j], step) * BLOCK;
          subtract(matrix, order.block(later[i], later[j]) * BLOCK, left, right);
        }
      }
    }
    return Optional.of(new BlockCholesky(order, matrix));
  }

  /** Replace a diagonal block by its factor; return whether it is positive definite. */
  private static boolean factor(double[] m, int own, double[] least, int row) {
    for (int i = 0; i < SIX; i++) {
      int left = own + i * SIX;
      for (int j = 0; j <= i; j++) {
        int right = own + j * SIX;
        double sum = m[left + j];
        for (int k = 0; k < j; k++) {
          sum -= m[left + k] * m[right + k];
        }
        if (j < i) {
          m[left + j] = sum / m[right + j];
        } else if (sum > least[row + i]) {
          m[left + i] = Math.sqrt(sum);
        } else {
          return false;
        }
      }
    }
    return true;
  }

  /** Divide a block from the right by the transpose of a factored diagonal block. */
  private static void divide(double[] m, int block, int own) {
    for (int row = block; row < block + BLOCK; row += SIX) {
      for (int j = 0; j < SIX; j++) {
        double sum = m[row + j];
        int right = own + j * SIX;
        for (int k = 0; k < j; k++) {
          sum -= m[row + k] * m[right + k];
        }
        m[row + j] = sum / m[right + j];
      }
    }
  }

  /** Subtract from a block the product of one with the transpose of another. */
  private static void subtract(double[] m, int from, int left, int right) {
    for (int i = 0; i < SIX; i++) {
      int a = left + i * SIX;
      double a0 = m[a];
      double a1 = m[a + 1];
      double a2 = m[a + 2];
      double a3 = m[a + 3];
      double a4 = m[a + 4];
      double a5 = m[a + 5];
      int b = right;
      for (int target = from + i * SIX; target < from + (i + 1) * SIX; target++) {
        m[target] -=
            a0 * m[b]
                + a1 * m[b + 1]
                + a2 * m[b + 2]
                + a3 * m[b + 3]
                + a4 * m[b + 4]
                + a5 * m[b + 5];
        b += SIX;
      }
    }
  }

  /** Solve for one right side, six numbers for each step; is overwritten by the solution. */
  void solve(double[] x) {
    forward(x, 1);
    for (int step = order.size() - 1; step >= 0; step--) {
      int at = step * SIX;
      for (int row : order.later(step)) {
        int block = order.block(row, step) * BLOCK;
        for (int i = 0; i < SIX; i++) {
          double value = x[row * SIX + i];
          for (int j = 0; j < SIX; j++) {
            x[at + j] -= factor[block + i * SIX + j] * value;
          }
        }
      }
      int own = order.block(step, step) * BLOCK;
      for (int i = SIX - 1; i >= 0; i--) {
        x[at + i] /= factor[own + i * (SIX + 1)];
        for (int j = 0; j < i; j++) {
          x[at + j] -= factor[own + i * SIX + j] * x[at + i];
        }
      }
    }
  }

  /**
   * Divide many right sides by the factor: half of a solution. The inner product of two of them is
   * the work of one on the movement under the other.
   *
   * @param x for each row its numbers of all right sides; is overwritten
   * @param many how many right sides
   */
  void forward(double[] x, int many) {
    for (int step = 0; step < order.size(); step++) {
      int at = step * SIX * many;
      if (isZero(x, at, SIX * many)) {
        continue; // loads reach only what is eliminated after them
      }
      int own = order.block(step, step) * BLOCK;
      for (int i = 0; i < SIX; i++) {
        int row = at + i * many;
        for (int j = 0; j < i; j++) {
          subtract(x, row, factor[own + i * SIX + j], at + j * many, many);
        }
        double pivot = 1 / factor[own + i * (SIX + 1)];
        for (int k = row; k < row + many; k++) {
          x[k] *= pivot;
        }
      }
      for (int later : order.later(step)) {
        int block = order.block(later, step) * BLOCK;
        for (int i = 0; i < SIX; i++) {
          for (int j = 0; j < SIX; j++) {
            int row = (later * SIX + i) * many;
            subtract(x, row, factor[block + i * SIX + j], at + j * many, many);
          }
        }
      }
    }
  }

  private static void subtract(double[] x, int row, double factor, int other, int many) {
    for (int k = 0; k < many; k++) {
      x[row + k] -= factor * x[other + k];
    }
  }

  private static boolean isZero(double[] x, int from, int length) {
    for (int i = from; i < from + length; i++) {
      if (x[i] != 0) {
        return false;
      }
    }
    return true;
  }
}
