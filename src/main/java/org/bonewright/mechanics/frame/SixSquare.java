package org.bonewright.mechanics.frame;

/** A matrix of six by six, such as a stiffness between two nodes. It never changes. */
public final class SixSquare {

  /** Its rows and columns. */
  public static final int SIZE = 6;

  private final double[][] rows;

  private SixSquare(double[][] rows) {
    this.rows = rows;
  }

  /** Makes a matrix entry by entry. */
  public static final class Maker {

    private final double[][] rows = new double[SIZE][SIZE];

    /** Add to an entry. */
    public Maker add(int row, int column, double value) {
      rows[row][column] += value;
      return this;
    }

    /** Add so many times the product of a vector with itself. */
    public Maker addSquare(Six vector, double factor) {
      double[] v = vector.values();
      for (int i = 0; i < SIZE; i++) {
        for (int j = 0; j < SIZE; j++) {
          rows[i][j] += factor * v[i] * v[j];
        }
      }
      return this;
    }

    /** Add another matrix. */
    public Maker add(SixSquare other) {
      for (int i = 0; i < SIZE; i++) {
        for (int j = 0; j < SIZE; j++) {
          rows[i][j] += other.rows[i][j];
        }
      }
      return this;
    }

    /** Return the matrix. */
    public SixSquare make() {
      double[][] copy = new double[SIZE][];
      for (int i = 0; i < SIZE; i++) {
        copy[i] = rows[i].clone();
      }
      return new SixSquare(copy);
    }
  }

  /** Return a matrix with these on its diagonal and nothing beside. */
  public static SixSquare diagonal(Six values) {
    Maker maker = new Maker();
    for (int i = 0; i < SIZE; i++) {
      maker.add(i, i, values.get(i));
    }
    return maker.make();
  }

  /** Return an entry. */
  public double get(int row, int column) {
    return rows[row][column];
  }

  /** Return the product with a vector. */
  public Six times(Six x) {
    double[] product = new double[SIZE];
    double[] values = x.values();
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        product[i] += rows[i][j] * values[j];
      }
    }
    return Six.of(product);
  }

  /** Return the vector that this matrix makes {@code right} of, by elimination with pivots. */
  public Six solve(Six right) {
    double[][] a = new double[SIZE][];
    for (int i = 0; i < SIZE; i++) {
      a[i] = rows[i].clone();
    }
    double[] x = right.values();
    for (int column = 0; column < SIZE; column++) {
      int pivot = pivot(a, column);
      double[] swapped = a[pivot];
      a[pivot] = a[column];
      a[column] = swapped;
      double value = x[pivot];
      x[pivot] = x[column];
      x[column] = value;
      for (int row = column + 1; row < SIZE; row++) {
        double factor = a[row][column] / a[column][column];
        for (int k = column; k < SIZE; k++) {
          a[row][k] -= factor * a[column][k];
        }
        x[row] -= factor * x[column];
      }
    }
    for (int row = SIZE - 1; row >= 0; row--) {
      for (int k = row + 1; k < SIZE; k++) {
        x[row] -= a[row][k] * x[k];
      }
      x[row] /= a[row][row];
    }
    return Six.of(x);
  }

  private static int pivot(double[][] a, int column) {
    int pivot = column;
    for (int row = column + 1; row < SIZE; row++) {
      if (Math.abs(a[row][column]) > Math.abs(a[pivot][column])) {
        pivot = row;
      }
    }
    return pivot;
  }

  /** Return the inverse. */
  public SixSquare inverse() {
    Maker maker = new Maker();
    for (int column = 0; column < SIZE; column++) {
      Six x = solve(Six.unit(column));
      for (int row = 0; row < SIZE; row++) {
        maker.add(row, column, x.get(row));
      }
    }
    return maker.make();
  }
}
