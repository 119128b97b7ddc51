package org.bonewright.mechanics.frame;

/**
 * Six numbers that belong together: a movement in mm and rad, or a force in N and N·mm, along three
 * axes and about the same.
 *
 * @param along first axis
 * @param away second axis
 * @param across third axis
 * @param aboutAlong about the first axis
 * @param aboutAway about the second axis
 * @param aboutAcross about the third axis
 */
public record Six(
    double along,
    double away,
    double across,
    double aboutAlong,
    double aboutAway,
    double aboutAcross) {

  /** Nothing. */
  public static final Six NONE = new Six(0, 0, 0, 0, 0, 0);

  /** Return one of the six unit vectors, counted from 0. */
  public static Six unit(int index) {
    double[] values = new double[SixSquare.SIZE];
    values[index] = 1;
    return of(values);
  }

  /** Return the six numbers of an array, in the order of the record. */
  public static Six of(double... values) {
    return new Six(values[0], values[1], values[2], values[3], values[4], values[5]);
  }

  /** Return one of the six, counted from 0. */
  public double get(int index) {
    return switch (index) {
      case 0 -> along;
      case 1 -> away;
      case 2 -> across;
      case 3 -> aboutAlong;
      case 4 -> aboutAway;
      case 5 -> aboutAcross;
      default -> throw new IndexOutOfBoundsException(index);
    };
  }

  /** Return the sum. */
  public Six plus(Six other) {
    return new Six(
        along + other.along,
        away + other.away,
        across + other.across,
        aboutAlong + other.aboutAlong,
        aboutAway + other.aboutAway,
        aboutAcross + other.aboutAcross);
  }

  /** Return the difference. */
  public Six minus(Six other) {
    return plus(other.times(-1));
  }

  /** Return it so many times as large. */
  public Six times(double factor) {
    return new Six(
        along * factor,
        away * factor,
        across * factor,
        aboutAlong * factor,
        aboutAway * factor,
        aboutAcross * factor);
  }

  /** Return the inner product: work, of a force and a movement. */
  public double dot(Six other) {
    return along * other.along
        + away * other.away
        + across * other.across
        + aboutAlong * other.aboutAlong
        + aboutAway * other.aboutAway
        + aboutAcross * other.aboutAcross;
  }

  /** Return the six in an array of its own. */
  public double[] values() {
    return new double[] {along, away, across, aboutAlong, aboutAway, aboutAcross};
  }
}
