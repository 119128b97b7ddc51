package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.bonewright.bone.Dimension;

/**
 * The least and the largest of several dimensions, of which some belong to things that may not be
 * there.
 */
final class Extremes {

  private final List<Dimension> certain = new ArrayList<>();
  private final List<Dimension> all = new ArrayList<>();

  /** Add the dimension of something that is there for certain, or may be. */
  void add(Dimension dimension, boolean isCertain) {
    all.add(dimension);
    if (isCertain) {
      certain.add(dimension);
    }
  }

  /** Return the least; empty where there is nothing at all. */
  Optional<Dimension> least() {
    if (all.isEmpty()) {
      return Optional.empty();
    }
    double min = all.stream().mapToDouble(Dimension::min).min().orElseThrow();
    double max =
        certain.isEmpty()
            ? top(all, Dimension::max)
            : certain.stream().mapToDouble(Dimension::max).min().orElseThrow();
    return Optional.of(new Dimension(min, max, assumed(), ""));
  }

  /** Return the largest; empty where there is nothing at all. */
  Optional<Dimension> most() {
    if (all.isEmpty()) {
      return Optional.empty();
    }
    double min =
        certain.isEmpty()
            ? all.stream().mapToDouble(Dimension::min).min().orElseThrow()
            : top(certain, Dimension::min);
    return Optional.of(new Dimension(min, top(all, Dimension::max), assumed(), ""));
  }

  private static double top(List<Dimension> of, ToDoubleFunction<Dimension> bound) {
    return of.stream().mapToDouble(bound).max().orElseThrow();
  }

  private boolean assumed() {
    return all.stream().anyMatch(Dimension::assumed);
  }
}
