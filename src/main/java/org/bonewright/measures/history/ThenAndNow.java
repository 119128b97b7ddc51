package org.bonewright.measures.history;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Compares what was read at the operation that failed with what is read now. Where there is nothing
 * to read at either, nothing has changed.
 *
 * @param then the operation that failed
 * @param now what follows it
 */
record ThenAndNow(Scene then, Scene now) {

  /** Return whether a word is another one. */
  Grade differs(String measure) {
    Reading before = then.read(measure);
    Reading after = now.read(measure);
    if (before instanceof Reading.Word a && after instanceof Reading.Word b) {
      if (a.possible().size() == 1 && b.possible().size() == 1) {
        return Grade.of(!a.possible().equals(b.possible()));
      }
      Set<String> shared = new TreeSet<>(a.possible());
      shared.retainAll(b.possible());
      return shared.isEmpty() ? Grade.YES : Grade.UNKNOWN;
    }
    return either(before, after);
  }

  /** Return whether a number has become larger by so much at least. */
  Grade grows(String measure, double atLeast) {
    Reading before = then.read(measure);
    Reading after = now.read(measure);
    if (before instanceof Reading.Amount a && after instanceof Reading.Amount b) {
      return reached(b.min() - a.max(), b.max() - a.min(), atLeast);
    }
    return either(before, after);
  }

  /** Return whether a number has become so many times as large at least. */
  Grade growsTimes(String measure, double atLeast) {
    Reading before = then.read(measure);
    Reading after = now.read(measure);
    if (before instanceof Reading.Amount a && after instanceof Reading.Amount b) {
      return reached(b.min() / a.max(), b.max() / a.min(), atLeast);
    }
    return either(before, after);
  }

  private static Grade reached(double least, double most, double wanted) {
    return least >= wanted ? Grade.YES : most < wanted ? Grade.NO : Grade.UNKNOWN;
  }

  private static Grade either(Reading before, Reading after) {
    return before instanceof Reading.None || after instanceof Reading.None
        ? Grade.NO
        : Grade.UNKNOWN;
  }

  /** Return whether a quantity became smaller. */
  static Grade less(Optional<Quantity> before, Optional<Quantity> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return Grade.UNKNOWN;
    }
    if (after.get().max() < before.get().min()) {
      return Grade.YES;
    }
    return after.get().min() >= before.get().max() ? Grade.NO : Grade.UNKNOWN;
  }
}
