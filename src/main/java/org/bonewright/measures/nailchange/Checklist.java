package org.bonewright.measures.nailchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bonewright.measures.Kind;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * Adds up conditions that are not kept: from those that certainly are not to those that may not.
 */
final class Checklist {

  /** What is known of one condition. */
  enum Kept {
    YES,
    NO,
    OPEN;

    static Kept of(boolean kept) {
      return kept ? YES : NO;
    }

    /** Return what is known of two conditions of which one is enough. */
    Kept or(Kept other) {
      return this == YES || other == YES ? YES : this == NO && other == NO ? NO : OPEN;
    }

    /** Return what is known of two conditions that are both needed. */
    Kept and(Kept other) {
      return this == NO || other == NO ? NO : this == YES && other == YES ? YES : OPEN;
    }
  }

  private final List<String> missed = new ArrayList<>();
  private final List<MissingFact> facts = new ArrayList<>();
  private int open;

  /** Add a condition; where it is open, the facts that would settle it. */
  void add(Kept kept, String whenMissed, List<MissingFact> missing) {
    if (kept == Kept.NO) {
      missed.add(whenMissed);
    } else if (kept == Kept.OPEN) {
      open++;
      missing.stream().filter(fact -> !facts.contains(fact)).forEach(facts::add);
    }
  }

  /** Return how many conditions are not kept. */
  Reading reading() {
    return new Reading.Amount(
        missed.size(),
        missed.size() + open,
        Kind.FACT,
        missed.isEmpty() ? "none for certain" : String.join(", ", missed),
        facts);
  }

  /** Return whether a word measure reads one of these words; where there is none, it does not. */
  static Kept oneOf(Scene scene, String measure, Set<String> words) {
    Reading reading = scene.read(measure);
    if (reading instanceof Reading.Word word) {
      boolean all = words.containsAll(word.possible());
      boolean some = word.possible().stream().anyMatch(words::contains);
      return all ? Kept.YES : some ? Kept.OPEN : Kept.NO;
    }
    return reading instanceof Reading.None ? Kept.NO : Kept.OPEN;
  }

  /** Return whether a number lies below a limit; where there is none, it is open. */
  static Kept below(Reading reading, double limit) {
    if (reading instanceof Reading.Amount amount) {
      return amount.max() < limit ? Kept.YES : amount.min() >= limit ? Kept.NO : Kept.OPEN;
    }
    return Kept.OPEN;
  }

  /** Return whether a number reaches a limit; where there is none, it is open. */
  static Kept atLeast(Reading reading, double limit) {
    return switch (below(reading, limit)) {
      case YES -> Kept.NO;
      case NO -> Kept.YES;
      case OPEN -> Kept.OPEN;
    };
  }
}
