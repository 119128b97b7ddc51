package org.bonewright.mechanics.frame;

/** A symmetric matrix of six by six, such as a stiffness between two nodes. It never changes. */
public final class SixSquare {

  /** Its rows and columns. */
  public static final int SIZE = 6;

  private final double[] values;

  private SixSquare(double[] values) {
    this.values = values;
  }

  /** Makes a matrix entry by entry. */
  static final class Maker {

    private final double[] values = new double[SIZE * SIZE];

    /** Set an entry and its mirror image. */
    Maker set(int row, int column, double value) {
      values[row * SIZE + column] = value;
      values[column * SIZE + row] = value;
      return this;
    }

    /** Return the matrix. */
    SixSquare make() {
      return new SixSquare(values.clone());
    }
  }

  /** Return a matrix with these on its diagonal and nothing beside. */
  public static SixSquare diagonal(Six values) {
    Maker maker = new Maker();
    for (int i = 0; i < SIZE; i++) {
      maker.set(i, i, values.get(i));
    }
    return maker.make();
  }

  /** Return what stands on its diagonal. */
  public Six diagonal() {
    return new Six(get(0, 0), get(1, 1), get(2, 2), get(3, 3), get(4, 4), get(5, 5));
  }

  /** Return an entry. */
  public double get(int row, int column) {
    return values[row * SIZE + column];
  }

  /** Return the product with a vector. */
  public Six times(Six x) {
    double[] product = new double[SIZE];
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        product[i] += values[i * SIZE + j] * x.get(j);
      }
    }
    return Six.of(product);
  }
}
