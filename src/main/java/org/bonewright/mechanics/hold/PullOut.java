package org.bonewright.mechanics.hold;

/**
 * The pull at which a thread strips out of bone: Chapman et al., J Biomech Eng 1996 (fit to tests
 * read in an abstract; coefficients of the shape of the thread from memory). It was measured with
 * cancellous screws in foam; its use in cortex is an extension.
 *
 * @param major outer diameter of the thread in mm
 * @param core core diameter in mm
 * @param pitch distance between two turns in mm
 */
public record PullOut(double major, double core, double pitch) {

  /** Return how the shape of the thread counts. */
  public double shape() {
    return 0.5 + 0.57735 * (major - core) / 2 / pitch;
  }

  /**
   * Return the pull in N.
   *
   * @param shearStrength of the bone in MPa
   * @param engaged length of thread that holds, in mm
   */
  public double capacity(double shearStrength, double engaged) {
    return shearStrength * engaged * Math.PI * major * shape();
  }
}
