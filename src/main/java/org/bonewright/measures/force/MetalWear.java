package org.bonewright.measures.force;

import java.util.List;
import org.bonewright.mechanics.answer.BoltDemand;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.NailAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.fatigue.Goodman;
import org.bonewright.mechanics.fatigue.NailFatigue;
import org.bonewright.mechanics.fatigue.PlateFatigue;

/**
 * Gathers the worst that the metal of a construct bears, over the holes of its plates, over its
 * nail and bolts, and over several loads. Bolts count with their full diameter and no notch.
 */
final class MetalWear {

  private final FixedBone fixed;
  private final LoadAnswer before;
  private final List<Goodman> plates;
  private final List<Goodman> nails;
  private final Wear plate = new Wear();
  private final Wear nail = new Wear();
  private final Wear bolt = new Wear();

  /**
   * Begin with nothing.
   *
   * @param fixed the construct
   * @param before what it answers before any load
   * @param plates what the metal of each plate bears
   * @param nails what the metal of the nail bears; empty where there is none
   */
  MetalWear(FixedBone fixed, LoadAnswer before, List<Goodman> plates, List<Goodman> nails) {
    this.fixed = fixed;
    this.before = before;
    this.plates = List.copyOf(plates);
    this.nails = List.copyOf(nails);
  }

  /**
   * Add what one load does. Where it is borne in part only, the rest counts in proportion: over an
   * open line the metal has to carry all of it, whichever screws slip. A load that is hardly borne
   * at all leaves it no life.
   *
   * @param under what the construct answers to the share of the load that it bears
   * @param share that share
   */
  void add(LoadAnswer under, double share) {
    if (share < Solver.LEAST_SHARE) {
      List.of(plate, nail, bolt).forEach(Wear::gone);
      return;
    }
    for (int i = 0; i < plates.size(); i++) {
      List<PlateCut> cuts = under.plates().get(i);
      for (int cut = 0; cut < cuts.size(); cut++) {
        PlateCut idle = before.plates().get(i).get(cut);
        PlateFatigue borne = PlateFatigue.at(fixed.plates().get(i), idle, cuts.get(cut));
        plate.add(
            plates.get(i), borne.steady(), borne.range() / share, borne.alternating() / share);
      }
    }
    for (Goodman metal : nails) {
      fixed.nail().ifPresent(own -> under.nail().ifPresent(now -> add(metal, own, now, share)));
    }
  }

  private void add(Goodman metal, MetalNail own, NailAnswer now, double share) {
    for (TubeCut cut : now.cuts()) {
      NailFatigue borne = NailFatigue.at(own, cut);
      nail.add(metal, 0, borne.range() / share, borne.alternating() / share);
    }
    for (BoltDemand demand : now.bolts()) {
      double range = demand.bendingStress() / share;
      bolt.add(metal, 0, range, range / 2);
    }
  }

  /** Return what the plates bear. */
  Wear plate() {
    return plate;
  }

  /** Return what the nail bears. */
  Wear nail() {
    return nail;
  }

  /** Return what the bolts bear. */
  Wear bolt() {
    return bolt;
  }

  /** Return how far what the metal bears for ever is used up, at the worst place of all. */
  double use() {
    return Math.max(plate.use(), Math.max(nail.use(), bolt.use()));
  }

  /** Return after how many loads the worst place of all breaks; infinite where it lasts. */
  double cycles() {
    return Math.min(plate.cycles(), Math.min(nail.cycles(), bolt.cycles()));
  }
}
