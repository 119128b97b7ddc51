package org.bonewright.principles;

import java.util.DoubleSummaryStatistics;
import java.util.Optional;
import org.bonewright.bone.Dimension;

/**
 * What would clear an unmet verdict, with the limits in it as they hold: a remedy that asks for
 * five where the hospital asks for three would contradict the verdict beside it.
 */
public final class Remedy {

  private Remedy() {}

  /** Return it for a verdict: with the limits that hold there. */
  public static String of(Judgement judgement) {
    Card card = judgement.card();
    return filled(
        card,
        limit ->
            Optional.ofNullable(judgement.limits().get(limit))
                .orElseGet(() -> anywhere(card, limit)));
  }

  /** Return it for a card: with each limit from its smallest to its largest value. */
  public static String of(Card card) {
    return filled(card, limit -> anywhere(card, limit));
  }

  private interface Limits {
    Dimension of(String limit);
  }

  private static String filled(Card card, Limits limits) {
    return Slots.filled(card.remedy(), limit -> limits.of(limit).numbers());
  }

  private static Dimension anywhere(Card card, String limit) {
    Card.Limit named = card.limits().get(limit);
    if (named == null) {
      throw new IllegalStateException(card.id() + " has no limit " + limit + " for its remedy");
    }
    DoubleSummaryStatistics values =
        named.values().values().stream().mapToDouble(Double::doubleValue).summaryStatistics();
    return new Dimension(values.getMin(), values.getMax(), false, limit);
  }
}
