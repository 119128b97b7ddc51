package org.bonewright.casefile;

import java.util.List;
import java.util.stream.IntStream;

/** Places in a list as people count them, from 1. */
final class Places {

  private Places() {}

  /** Return the list without the entries at these places. */
  static <T> List<T> without(List<T> all, List<Integer> places) {
    return IntStream.rangeClosed(1, all.size())
        .filter(place -> !places.contains(place))
        .mapToObj(place -> all.get(place - 1))
        .toList();
  }
}
