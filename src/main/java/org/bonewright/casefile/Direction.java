package org.bonewright.casefile;

/**
 * A direction around the bone's axis, in degrees: anterior 0, lateral 90, posterior 180, medial
 * 270, seen so on both sides (a left bone is mirrored). In a file it is a number from 0 up to, not
 * including, 360, or one of the eight words of {@link Named}.
 *
 * @param degrees 0 ≤ degrees &lt; 360
 */
public record Direction(double degrees) {

  /**
   * Refuses an angle outside one turn.
   *
   * @throws IllegalArgumentException if the angle is not in [0, 360)
   */
  public Direction {
    if (!(degrees >= 0 && degrees < 360)) {
      throw new IllegalArgumentException("not within one turn: " + degrees);
    }
  }

  /** Return the angle between the two directions, the short way round, 0 to 180 degrees. */
  public double angleTo(Direction other) {
    double apart = Math.abs(degrees - other.degrees);
    return Math.min(apart, 360 - apart);
  }

  /** The surfaces that have a name of their own. */
  public enum Named {
    ANTERIOR(0),
    ANTEROLATERAL(45),
    LATERAL(90),
    POSTEROLATERAL(135),
    POSTERIOR(180),
    POSTEROMEDIAL(225),
    MEDIAL(270),
    ANTEROMEDIAL(315);

    private final double degrees;

    Named(double degrees) {
      this.degrees = degrees;
    }

    /** Return the direction that this name stands for. */
    public Direction direction() {
      return new Direction(degrees);
    }
  }
}
