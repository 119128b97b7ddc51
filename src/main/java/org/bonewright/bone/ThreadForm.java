package org.bonewright.bone;

import org.bonewright.casefile.ScrewRow;

/**
 * The thread of a screw in mm, after ISO 5835 where it has such a screw. All from memory.
 *
 * @param major outer diameter of the thread
 * @param core diameter of the core
 * @param pitch distance between two turns
 */
public record ThreadForm(double major, double core, double pitch) {

  private static final double[][] CORTICAL = {
    {2.7, 1.9, 1.00}, {3.5, 2.4, 1.25}, {4.0, 2.9, 1.50}, {4.5, 3.0, 1.75}, {5.0, 3.5, 1.75}
  };
  private static final double[][] CANCELLOUS = {{4.0, 1.9, 1.75}, {6.5, 3.0, 2.75}};
  private static final double[][] LOCKING = {{3.5, 2.9, 0.80}, {5.0, 4.35, 1.00}};

  /**
   * Return the thread of a screw of this kind and outer diameter. A diameter that no row has takes
   * core and pitch in proportion from the row nearest to it.
   *
   * @param major outer diameter in mm, above zero
   */
  public static ThreadForm of(ScrewRow.Type type, double major) {
    double[][] rows =
        switch (type) {
          case CORTICAL -> CORTICAL;
          case CANCELLOUS -> CANCELLOUS;
          case LOCKING -> LOCKING;
        };
    double[] nearest = rows[0];
    for (double[] row : rows) {
      if (Math.abs(row[0] - major) < Math.abs(nearest[0] - major)) {
        nearest = row;
      }
    }
    double scale = major / nearest[0];
    return new ThreadForm(major, nearest[1] * scale, nearest[2] * scale);
  }
}
