package org.bonewright.review;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Acceptance;
import org.bonewright.principles.Card;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.VerdictKind;

/** Says of every acceptance what it meets, so that none is swallowed. */
final class Acceptances {

  private Acceptances() {}

  static List<String> lines(JudgedCase judged, RuleSet rules) {
    return judged.caseFile().accepted().stream().map(a -> line(a, judged, rules)).toList();
  }

  private static String line(Acceptance accepted, JudgedCase judged, RuleSet rules) {
    Optional<Card> card = rules.card(accepted.principle());
    String what =
        card.map(Card::title).orElse(accepted.principle())
            + " on "
            + accepted.on()
            + ", by "
            + accepted.by()
            + ": "
            + accepted.reason();
    return what
        + " ["
        + card.map(c -> standing(c, accepted, judged)).orElse("no such principle here")
        + "]";
  }

  private static String standing(Card card, Acceptance accepted, JudgedCase judged) {
    if (!card.overridable()) {
      return "not open to acceptance";
    }
    List<VerdictKind> kinds =
        judged.judgements().values().stream()
            .flatMap(List::stream)
            .filter(j -> j.card().id().equals(card.id()))
            .filter(j -> j.subject().replaceFirst("/.*", "").equals(accepted.on()))
            .map(Judgement::verdict)
            .map(verdict -> verdict.kind())
            .toList();
    return kinds.contains(VerdictKind.UNMET)
        ? "unmet, stays visible"
        : kinds.contains(VerdictKind.UNKNOWN) ? "still open" : "nothing unmet to accept";
  }
}
