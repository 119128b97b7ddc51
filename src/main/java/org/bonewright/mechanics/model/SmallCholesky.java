package org.bonewright.mechanics.model;

import java.util.Optional;

/** The Cholesky factor of a small symmetric positive definite matrix without gaps. */
final class SmallCholesky {

  /** What is left of a diagonal entry below this share of it is rounding. */
  private static final double SMALLEST = 1e-13;

  private final double[][] rows;

  private SmallCholesky(double[][] rows) {
    this.rows = rows;
  }

  /**
   * Factor a matrix.
   *
   * @param matrix its lower triangle; is overwritten
   * @return empty if the matrix is not positive definite
   */
  static Optional<SmallCholesky> of(double[][] matrix) {
    for (int i = 0; i < matrix.length; i++) {
      double[] row = matrix[i];
      double least = row[i] * SMALLEST;
      for (int j = 0; j <= i; j++) {
        double[] other = matrix[j];
        double sum = row[j];
        for (int k = 0; k < j; k++) {
          sum -= row[k] * other[k];
        }
        if (j < i) {
          row[j] = sum / other[j];
        } else if (sum > least) {
          row[i] = Math.sqrt(sum);
        } else {
          return Optional.empty();
        }
      }
    }
    return Optional.of(new SmallCholesky(matrix));
  }

  /** Solve for a right side; is overwritten by the solution. */
  void solve(double[] x) {
    for (int i = 0; i < x.length; i++) {
      double[] row = rows[i];
      double sum = x[i];
      for (int k = 0; k < i; k++) {
        sum -= row[k] * x[k];
      }
      x[i] = sum / row[i];
    }
    for (int i = x.length - 1; i >= 0; i--) {
      double[] row = rows[i];
      x[i] /= row[i];
      for (int k = 0; k < i; k++) {
        x[k] -= row[k] * x[i];
      }
    }
  }
}
