package org.bonewright.principles;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;

/** Puts a verdict into the words of its card. */
public final class Wording {

  private static final String IT = "{it}";

  private final Function<String, Definition> definitions;

  /** Make the wording for a rule set. */
  public Wording(RuleSet rules) {
    this.definitions = rules::definition;
  }

  /** Return a few sentences: what was found, with its numbers and limits, and what is told. */
  public String of(Judgement judgement) {
    return said(judgement) + told(judgement);
  }

  private String said(Judgement judgement) {
    Card.Say say = judgement.card().say();
    if (judgement.verdict() instanceof Verdict.Unmet unmet) {
      return unmet(judgement, unmet);
    }
    return switch (judgement.verdict().kind()) {
      case MET -> filled(say.met(), judgement, "");
      case NOT_APPLICABLE -> filled(say.notApplicable(), judgement, "");
      case UNKNOWN, UNMET -> "Cannot be judged: " + asked(judgement);
    };
  }

  /** Return the sentences beside the verdict, each after a space, of what there is to tell. */
  private String told(Judgement judgement) {
    StringBuilder told = new StringBuilder();
    for (Card.Told each : judgement.card().tells()) {
      Optional.ofNullable(judgement.readings().get(each.of()))
          .map(reading -> reading.shown(definitions.apply(each.of()).shownUnit()))
          .ifPresent(shown -> told.append(' ').append(each.say().replace(IT, shown)));
    }
    return told.toString();
  }

  private String unmet(Judgement judgement, Verdict.Unmet unmet) {
    List<String> limits = new ArrayList<>(unmet.certain());
    if (!limits.contains(unmet.limit())) {
      limits.add(0, unmet.limit());
    }
    Set<String> needs = new HashSet<>();
    return String.join(
        " ",
        notSaidTwice(
            limits.stream()
                .filter(limit -> needs.add(cutBy(judgement.card(), limit)))
                .map(
                    limit ->
                        filled(
                            judgement.card().say().unmet().getOrDefault(limit, ""),
                            judgement,
                            limit))
                .toList()));
  }

  /** A sentence that stands whole within another adds nothing to it. */
  private static List<String> notSaidTwice(List<String> sentences) {
    List<String> once = sentences.stream().distinct().toList();
    return once.stream()
        .filter(
            said -> once.stream().noneMatch(other -> !other.equals(said) && other.contains(said)))
        .toList();
  }

  /** Of several limits of one number the first, which is the gravest, says all. */
  private static String cutBy(Card card, String limit) {
    return Optional.ofNullable(card.limits().get(limit)).map(Card.Limit::of).orElse(limit);
  }

  private static String asked(Judgement judgement) {
    if (judgement.verdict() instanceof Verdict.Unknown unknown && !unknown.asks().isEmpty()) {
      return unknown.asks().get(0).question();
    }
    return judgement
        .share()
        .map(share -> share.inWords() + ".")
        .orElse("it hangs on what is given as a range.");
  }

  private String filled(String text, Judgement judgement, String decided) {
    return Slots.filled(text, slot -> value(slot, judgement, decided));
  }

  private String value(String slot, Judgement judgement, String decided) {
    String limit = slot.equals("limit") ? decided : slot;
    return read(slot, judgement) // first: a need and a limit may share a name
        .or(() -> Optional.ofNullable(judgement.limits().get(limit)).map(Dimension::numbers))
        .orElse("(" + slot + ")");
  }

  private Optional<String> read(String need, Judgement judgement) {
    return Optional.ofNullable(judgement.card().needs().get(need))
        .flatMap(
            measure ->
                Optional.ofNullable(judgement.readings().get(need))
                    .map(reading -> reading.shown(definitions.apply(measure).shownUnit())));
  }
}
