package org.bonewright.mechanics.frame;

import java.util.Optional;

/**
 * The Cholesky factor of a symmetric positive definite matrix with a band, after Golub and Van
 * Loan, Matrix Computations, algorithm 4.3.5 (from memory). Made once for a matrix; solves for any
 * number of right sides.
 */
final class BandedCholesky {

  private final double[][] rows;
  private final int band;

  private BandedCholesky(double[][] rows, int band) {
    this.rows = rows;
    this.band = band;
  }

  /**
   * Factor a matrix.
   *
   * @param matrix for each row its entries from {@code band} columns before the diagonal to the
   *     diagonal, which comes last; is overwritten
   * @return empty if the matrix is not positive definite: something can move without resistance
   */
  static Optional<BandedCholesky> of(double[][] matrix) {
    int band = matrix.length == 0 ? 0 : matrix[0].length - 1;
    for (int row = 0; row < matrix.length; row++) {
      double before = matrix[row][band];
      for (int column = Math.max(0, row - band); column <= row; column++) {
        double sum = matrix[row][column - row + band];
        int from = Math.max(0, Math.max(row, column) - band);
        for (int k = from; k < column; k++) {
          sum -= matrix[row][k - row + band] * matrix[column][k - column + band];
        }
        if (column < row) {
          matrix[row][column - row + band] = sum / matrix[column][band];
        } else if (sum > before * SMALLEST) {
          matrix[row][band] = Math.sqrt(sum);
        } else {
          return Optional.empty();
        }
      }
    }
    return Optional.of(new BandedCholesky(matrix, band));
  }

  /** What is left of a diagonal entry below this share of it is rounding, not resistance. */
  private static final double SMALLEST = 1e-13;

  /** Return the solution for one right side. */
  double[] solve(double[] right) {
    int size = rows.length;
    double[] x = right.clone();
    for (int row = 0; row < size; row++) {
      double sum = x[row];
      for (int k = Math.max(0, row - band); k < row; k++) {
        sum -= rows[row][k - row + band] * x[k];
      }
      x[row] = sum / rows[row][band];
    }
    for (int row = size - 1; row >= 0; row--) {
      x[row] /= rows[row][band];
      for (int k = Math.max(0, row - band); k < row; k++) {
        x[k] -= rows[row][k - row + band] * x[row];
      }
    }
    return x;
  }
}
