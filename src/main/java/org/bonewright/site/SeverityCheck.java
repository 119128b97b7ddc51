package org.bonewright.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.ReadPart;
import org.bonewright.principles.Card;
import org.bonewright.principles.LocalSeverity;
import org.bonewright.principles.Severity;

/**
 * Whether one changed severity may be what the site makes of it.
 *
 * <p>Nothing counts as more than the gravest that its card allows: a profile leaves out only what
 * can never be critical, and a site must not undo that. A principle that can be critical is about
 * safety, or about what usually ends in failure; a site may take it down to major, where every
 * summary still names it, and no further.
 */
final class SeverityCheck {

  private final Card card;
  private final ReadPart part;
  private final SeverityChange change;
  private final List<Problem> problems = new ArrayList<>();

  SeverityCheck(Card card, ReadPart part, SeverityChange change) {
    this.card = card;
    this.part = part;
    this.change = change;
  }

  /** Return every problem found by {@link #severity}. */
  List<Problem> problems() {
    return problems;
  }

  /** Return the local severity, if nothing speaks against it. */
  Optional<LocalSeverity> severity() {
    if (!card.grades().contains(change.from())) {
      problems.add(
          part.error(
              "from",
              "the text \"" + change.from().word() + "\"",
              "a severity that this principle gives: "
                  + card.grades().stream().map(Severity::word).collect(Collectors.joining(", "))));
    }
    if (change.to() == change.from()) {
      refuseTo("another severity; one that stays as it is needs no entry");
    } else if (change.to().compareTo(card.highest()) > 0) {
      refuseTo("at most " + card.highest().word() + ", the gravest that this principle can be");
    } else if (isLowered() && isTooLow()) {
      refuseTo("at least major, since this principle can be critical");
    }
    return problems.isEmpty()
        ? Optional.of(new LocalSeverity(card.id(), change.from(), change.to(), change.grounds()))
        : Optional.empty();
  }

  private boolean isLowered() {
    return change.to().compareTo(change.from()) < 0;
  }

  private boolean isTooLow() {
    return card.highest() == Severity.CRITICAL && change.to().compareTo(Severity.MAJOR) < 0;
  }

  private void refuseTo(String allowed) {
    problems.add(part.error("to", "the text \"" + change.to().word() + "\"", allowed));
  }
}
