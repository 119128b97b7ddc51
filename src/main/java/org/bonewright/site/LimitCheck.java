package org.bonewright.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.reading.Nearest;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.Quoted;
import org.bonewright.casefile.reading.ReadPart;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain;
import org.bonewright.principles.Card;
import org.bonewright.principles.LocalLimit;
import org.bonewright.principles.RuleSet;

/** Whether one changed limit exists on its card, and its value and unit are possible there. */
final class LimitCheck {

  private final RuleSet rules;
  private final Card card;
  private final ReadPart part;
  private final LimitChange change;
  private final List<Problem> problems = new ArrayList<>();

  LimitCheck(RuleSet rules, Card card, ReadPart part, LimitChange change) {
    this.rules = rules;
    this.card = card;
    this.part = part;
    this.change = change;
  }

  /** Return every problem found by {@link #limit}. */
  List<Problem> problems() {
    return problems;
  }

  /** Return the local limit, if nothing speaks against it. */
  Optional<LocalLimit> limit() {
    Optional<Card.Limit> limit = Optional.ofNullable(card.limits().get(change.limit()));
    if (limit.isEmpty()) {
      unknown("limit", change.limit(), List.copyOf(card.limits().keySet()), "a limit of this card");
      return Optional.empty();
    }
    value(limit.get());
    Optional<Double> published = published(limit.get());
    published
        .filter(value -> value == change.value())
        .ifPresent(
            value ->
                problems.add(
                    part.error(
                        "value",
                        "the published value " + Dimension.number(value),
                        "another value; a limit that stays as it is needs no entry")));
    return problems.isEmpty()
        ? published.map(
            value ->
                new LocalLimit(
                    card.id(),
                    change.limit(),
                    change.where(),
                    change.value() + 0.0, // no negative zero
                    value,
                    change.grounds()))
        : Optional.empty();
  }

  private Optional<Double> published(Card.Limit limit) {
    if (limit.by().isEmpty()) {
      change
          .where()
          .ifPresent(
              where ->
                  problems.add(
                      part.error("where", "the text " + Quoted.of(where), "nothing")
                          .withHint("This limit has a single value; leave the field out.")));
      return change.where().isPresent()
          ? Optional.empty()
          : Optional.of(limit.at(Card.Limit.OTHERWISE));
    }
    List<String> allowed = new Combinations(rules, card, limit.by()).withValue(limit);
    if (change.where().isEmpty()) {
      problems.add(part.error("where", "nothing", oneOf(limit, allowed)));
      return Optional.empty();
    }
    String where = change.where().get();
    if (!allowed.contains(where)) {
      unknown("where", where, allowed, oneOf(limit, allowed));
      return Optional.empty();
    }
    return Optional.of(limit.at(where));
  }

  private static String oneOf(Card.Limit limit, List<String> allowed) {
    return "the words for " + String.join(" and ", limit.by()) + ": " + String.join(", ", allowed);
  }

  private void unknown(String field, String found, List<String> known, String allowed) {
    String list = known.isEmpty() ? "nothing; this principle has no limits" : allowed;
    Problem problem =
        part.error(
            field,
            "the text " + Quoted.of(found),
            field.equals("limit") && !known.isEmpty()
                ? "one of " + String.join(", ", known)
                : list);
    problems.add(
        Nearest.of(found, known)
            .map(near -> problem.withHint("Did you mean \"" + near + "\"?"))
            .orElse(problem));
  }

  private void value(Card.Limit limit) {
    Definition definition =
        rules.definition(
            Optional.ofNullable(card.needs().get(limit.of()))
                .orElseThrow(() -> new IllegalStateException(card.id() + " cuts nothing")));
    if (!(definition.domain() instanceof Domain.Numbers numbers)) {
      throw new IllegalStateException(card.id() + " cuts words by a limit");
    }
    if (!change.unit().equals(numbers.unit())) {
      problems.add(
          part.error(
              "unit",
              "the text " + Quoted.of(change.unit()),
              "the unit \"" + numbers.unit() + "\" of " + definition.title()));
    }
    double value = change.value();
    boolean onStep =
        numbers.step() == 0 || Math.rint(value / numbers.step()) * numbers.step() == value;
    if (value < numbers.min() || value > numbers.max() || !onStep) {
      problems.add(part.error("value", "the number " + Dimension.number(value), range(numbers)));
    }
  }

  private static String range(Domain.Numbers numbers) {
    return "a number"
        + (Double.isInfinite(numbers.min()) ? "" : " from " + Dimension.number(numbers.min()))
        + (Double.isInfinite(numbers.max()) ? "" : " to " + Dimension.number(numbers.max()))
        + (numbers.step() == 0 ? "" : " in steps of " + Dimension.number(numbers.step()));
  }
}
