package org.bonewright.measures.force;

import org.bonewright.mechanics.fatigue.Goodman;

/** Gathers the worst that metal bears, over places and over several loads. */
final class Wear {

  private double range;
  private double steady;
  private double use;
  private double cycles = Double.POSITIVE_INFINITY;

  /**
   * Add what one place bears.
   *
   * @param metal what its metal bears
   * @param before steady nominal stress in MPa
   * @param nominal range of the nominal stress in MPa
   * @param alternating half of the range in MPa, notch included
   */
  void add(Goodman metal, double before, double nominal, double alternating) {
    if (nominal > range) {
      range = nominal;
      steady = before;
    }
    double mean = before + nominal / 2;
    use = Math.max(use, metal.use(alternating, mean));
    cycles = Math.min(cycles, metal.cycles(alternating, mean));
  }

  /** Note that a load is hardly borne at all: it leaves the metal no life. */
  void gone() {
    cycles = 0;
    use = Math.max(use, Solver.MUCH);
  }

  /** Return the largest range of the nominal stress in MPa. */
  double range() {
    return range;
  }

  /** Return the nominal stress in MPa before any load, where the range is largest. */
  double steady() {
    return steady;
  }

  /** Return how far what the metal bears for ever is used up, at the worst place. */
  double use() {
    return use;
  }

  /** Return after how many loads the worst place breaks; infinite where it lasts. */
  double cycles() {
    return cycles;
  }
}
