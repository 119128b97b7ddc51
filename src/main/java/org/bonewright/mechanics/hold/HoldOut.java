package org.bonewright.mechanics.hold;

import java.util.ArrayList;
import java.util.List;

/**
 * How much a row of screws holds a rigid plate against a pull that need not act in its middle.
 *
 * @param at place of each screw along the plate in mm
 * @param capacity what each screw holds in N
 */
public record HoldOut(List<Double> at, List<Double> capacity) {

  /**
   * Refuses rows of unequal length or without a screw.
   *
   * @throws IllegalArgumentException if there is no screw, or not one capacity for each
   */
  public HoldOut {
    at = List.copyOf(at);
    capacity = List.copyOf(capacity);
    if (at.isEmpty() || at.size() != capacity.size()) {
      throw new IllegalArgumentException(at.size() + " screws, " + capacity.size() + " capacities");
    }
  }

  /**
   * Return the pull at which the worst screw gives, then the same without it, and so on until the
   * rest cannot balance the pull. The screws share as equal springs under a rigid plate.
   *
   * @param load where the pull acts, in mm
   */
  public List<Double> sequential(double load) {
    List<Double> left = new ArrayList<>(at);
    List<Double> holds = new ArrayList<>(capacity);
    List<Double> pulls = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Double> shares = shares(left, load);
      if (shares.isEmpty()) {
        break;
      }
      int worst = -1;
      double pull = Double.POSITIVE_INFINITY;
      for (int i = 0; i < left.size(); i++) {
        double here = shares.get(i) > 0 ? holds.get(i) / shares.get(i) : Double.POSITIVE_INFINITY;
        if (here < pull) {
          pull = here;
          worst = i;
        }
      }
      pulls.add(pull);
      left.remove(worst);
      holds.remove(worst);
    }
    return pulls;
  }

  /** Return the largest pull that the row bears when its screws give one after another, in N. */
  public double holds(double load) {
    return sequential(load).stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /** Return whether, once the first screw has given, the next ones give at a lower pull. */
  public boolean unzips(double load) {
    List<Double> pulls = sequential(load);
    return pulls.size() < 2 || pulls.get(1) < pulls.get(0);
  }

  /**
   * Return the share of a pull of 1 that falls to each screw; empty where they cannot balance it.
   */
  private static List<Double> shares(List<Double> at, double load) {
    double mean = at.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    double spread = at.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
    if (spread == 0 && load != mean) {
      return List.of();
    }
    return at.stream()
        .map(x -> 1.0 / at.size() + (spread == 0 ? 0 : (x - mean) * (load - mean) / spread))
        .toList();
  }

  /**
   * Return the largest pull that the row bears as one block, every screw carrying at most its
   * capacity either way: the rigid-plastic limit. By the kinematic theorem it is the smallest work
   * over all turns of the plate about one of its screws, or its shift as a whole.
   */
  public double group(double load) {
    double least = capacity.stream().mapToDouble(Double::doubleValue).sum();
    for (double centre : at) {
      if (centre == load) {
        continue;
      }
      double work = 0;
      for (int i = 0; i < at.size(); i++) {
        work += capacity.get(i) * Math.abs((at.get(i) - centre) / (load - centre));
      }
      least = Math.min(least, work);
    }
    return least;
  }
}
