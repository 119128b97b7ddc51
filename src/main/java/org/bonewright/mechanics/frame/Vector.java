package org.bonewright.mechanics.frame;

/**
 * A point or a direction in space.
 *
 * @param x towards the first plate
 * @param y across
 * @param z along the bone, from proximal to distal
 */
public record Vector(double x, double y, double z) {

  /** Return the sum. */
  public Vector plus(Vector other) {
    return new Vector(x + other.x, y + other.y, z + other.z);
  }

  /** Return the way from the other point to this one. */
  public Vector minus(Vector other) {
    return new Vector(x - other.x, y - other.y, z - other.z);
  }

  /** Return it so many times as long. */
  public Vector times(double factor) {
    return new Vector(x * factor, y * factor, z * factor);
  }

  /** Return the cross product. */
  public Vector cross(Vector other) {
    return new Vector(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** Return the inner product. */
  public double dot(Vector other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** Return the length. */
  public double length() {
    return Math.sqrt(dot(this));
  }

  /**
   * Return the same direction with length 1.
   *
   * @throws ArithmeticException if it has no length
   */
  public Vector unit() {
    double length = length();
    if (!(length > 0)) {
      throw new ArithmeticException("no direction");
    }
    return times(1 / length);
  }
}
