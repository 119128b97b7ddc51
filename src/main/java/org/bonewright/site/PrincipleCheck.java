package org.bonewright.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.reading.Nearest;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Quoted;
import org.bonewright.casefile.reading.ReadPart;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;

/** Whether a change names a principle that there is and that a site may change, and its grounds. */
final class PrincipleCheck {

  private final RuleSet rules;
  private final List<Problem> problems = new ArrayList<>();

  PrincipleCheck(RuleSet rules) {
    this.rules = rules;
  }

  /** Return every problem found so far. */
  List<Problem> problems() {
    return problems;
  }

  /** Return the card that a change is about, if a site may change it. */
  Optional<Card> card(ReadPart part, Change change) {
    problems.addAll(GroundsCheck.problems(part, change));
    Optional<Card> card = rules.card(change.principle());
    if (card.isEmpty()) {
      problems.add(unknown(part, change.principle()));
      return card;
    }
    Optional<String> refusal = card.get().siteMayNotChange();
    refusal.ifPresent(
        reason ->
            problems.add(
                part.error(
                        "principle",
                        "a change of " + change.principle(),
                        "a principle that a site may change, which this one is not")
                    .withHint(reason)));
    return refusal.isPresent() ? Optional.empty() : card;
  }

  private Problem unknown(ReadPart part, String id) {
    Problem problem =
        part.error(
            "principle", "the text " + Quoted.of(id), "the id of a principle that is judged");
    if (rules.promise(id).isPresent()) {
      return problem.withHint("It is a promise of the program; no site can change it.");
    }
    List<String> ids = rules.cards().stream().map(Card::id).toList();
    return rules.cards().stream()
        .filter(card -> card.formerIds().contains(id))
        .map(card -> "That was its former id; it is called \"" + card.id() + "\" now.")
        .findFirst()
        .or(() -> Nearest.of(id, ids).map(near -> "Did you mean \"" + near + "\"?"))
        .map(problem::withHint)
        .orElseGet(() -> problem.withHint("bonewright principles lists them."));
  }
}
