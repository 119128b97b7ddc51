package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A value and where it stands in the case file.
 *
 * @param value the value
 * @param at its place
 */
record Located<T>(T value, At at) {

  /** Return the elements of a list, each with its place. */
  static <T> Stream<Located<T>> each(List<T> list, At at) {
    return IntStream.range(0, list.size()).mapToObj(i -> new Located<>(list.get(i), at.item(i)));
  }

  /** Return the elements of a list that may be absent, each with its place. */
  static <T> Stream<Located<T>> each(Optional<List<T>> list, At at) {
    return each(list.orElse(List.of()), at);
  }

  /** Return the value if it is present, with its place. */
  static <T> Stream<Located<T>> maybe(Optional<T> value, At at) {
    return value.map(present -> new Located<>(present, at)).stream();
  }
}
