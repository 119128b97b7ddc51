package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.fatigue.Goodman;
import org.bonewright.mechanics.fatigue.PlateFatigue;

/**
 * Gathers the worst that the plates of a construct bear, over their holes and over several loads.
 */
final class PlateWear {

  /** Less than this of a load is no load worth the name. */
  private static final double LEAST_SHARE = 0.01;

  private final FixedBone fixed;
  private final LoadAnswer before;
  private final List<Goodman> metals;
  private double range;
  private double steady;
  private double use;
  private double cycles = Double.POSITIVE_INFINITY;

  /**
   * Begin with nothing.
   *
   * @param fixed the construct
   * @param before what it answers before any load
   * @param metals what the metal of each plate bears
   */
  PlateWear(FixedBone fixed, LoadAnswer before, List<Goodman> metals) {
    this.fixed = fixed;
    this.before = before;
    this.metals = List.copyOf(metals);
  }

  /**
   * Add what one load does. Where it is borne in part only, the rest counts in proportion: over an
   * open line the plate has to carry all of it, whichever screws slip. A load that is hardly borne
   * at all leaves the plate no life.
   *
   * @param under what the construct answers to the share of the load that it bears
   * @param share that share
   */
  void add(LoadAnswer under, double share) {
    if (share < LEAST_SHARE) {
      cycles = 0;
      use = Math.max(use, Solver.MUCH);
      return;
    }
    for (int plate = 0; plate < metals.size(); plate++) {
      List<PlateCut> cuts = under.plates().get(plate);
      for (int i = 0; i < cuts.size(); i++) {
        PlateCut idle = before.plates().get(plate).get(i);
        PlateFatigue borne = PlateFatigue.at(fixed.plates().get(plate), idle, cuts.get(i));
        add(metals.get(plate), whole(borne, share));
      }
    }
  }

  private static PlateFatigue whole(PlateFatigue borne, double share) {
    return new PlateFatigue(borne.steady(), borne.range() / share, borne.alternating() / share);
  }

  private void add(Goodman metal, PlateFatigue here) {
    if (here.range() > range) {
      range = here.range();
      steady = here.steady();
    }
    use = Math.max(use, metal.use(here.alternating(), here.mean()));
    cycles = Math.min(cycles, metal.cycles(here.alternating(), here.mean()));
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
