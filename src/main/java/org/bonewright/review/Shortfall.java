package org.bonewright.review;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Card;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Verdict;

/**
 * How far a finding certainly lies beyond the limit that decided, as a share of that limit; of what
 * a model samples, how far its likely range lies beyond.
 */
final class Shortfall {

  private Shortfall() {}

  /** Return the share, 0 or more; 0 where words decided, or the limit is 0. */
  static double of(Judgement judgement) {
    if (!(judgement.verdict() instanceof Verdict.Unmet unmet)) {
      return 0;
    }
    Optional<Dimension> limit = Optional.ofNullable(judgement.limits().get(unmet.limit()));
    Optional<Reading> read =
        Optional.ofNullable(judgement.card().limits().get(unmet.limit()))
            .map(Card.Limit::of)
            .map(judgement.readings()::get);
    Optional<Dimension> range = read.flatMap(Shortfall::range);
    if (limit.isEmpty() || limit.get().min() <= 0 || range.isEmpty()) {
      return 0;
    }
    double below = (limit.get().min() - range.get().max()) / limit.get().min();
    double above = (range.get().min() - limit.get().max()) / limit.get().max();
    return Math.max(0, Math.max(below, above));
  }

  private static Optional<Dimension> range(Reading reading) {
    if (reading instanceof Reading.Amount amount) {
      return Optional.of(new Dimension(amount.min(), amount.max(), false, ""));
    }
    return reading instanceof Reading.Sampled sampled
        ? Optional.of(new Dimension(sampled.low(), sampled.high(), false, ""))
        : Optional.empty();
  }
}
