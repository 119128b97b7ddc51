package org.bonewright.change;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bonewright.principles.Card;
import org.bonewright.principles.Remedy;
import org.bonewright.principles.RuleSet;

/** Says why what stays open after a search stays so. */
final class Reasons {

  private final RuleSet rules;
  private final Search search;
  private final PlanJudge judge;
  private final BeforePlan.Infection infection;

  /**
   * Make it.
   *
   * @param infection how far infection is known
   */
  Reasons(RuleSet rules, Search search, PlanJudge judge, BeforePlan.Infection infection) {
    this.rules = rules;
    this.search = search;
    this.judge = judge;
    this.infection = infection;
  }

  /** Return what is critical or major and open, the gravest first. */
  List<Improvement.Stays> of(Node end, OpenPlaces places) {
    return places.grave(end.judged()).stream().map(place -> stays(end, place)).toList();
  }

  private Improvement.Stays stays(Node end, Place place) {
    JudgedPlan.Found found =
        Optional.ofNullable(end.judged().found().get(place))
            .orElseThrow(() -> new IllegalStateException("not judged: " + place));
    Optional<Card> card = rules.card(place.principle());
    return new Improvement.Stays(
        place.principle(),
        judge.title(place),
        place.subject(),
        found.standing(),
        found.words(),
        why(end, place, card.map(Card::remedyMoves).orElse(List.of())),
        card.map(Remedy::of).orElse("").strip());
  }

  private String why(Node end, Place place, List<String> moves) {
    Map<String, Long> offered =
        search.offered(end, place).stream()
            .collect(Collectors.groupingBy(Option::move, Collectors.counting()));
    if (search.concernsInfection(place)
        && !offered.containsKey(InfectionStages.MOVE)
        && infection != BeforePlan.Infection.NO_SIGN) {
      return (infection == BeforePlan.Infection.PROVEN ? Undrawn.INFECTION : Undrawn.DOUBT).words();
    }
    if (search.isInfectionFirst(end)) {
      return "Infection comes first; until it is treated, no step was looked for here.";
    }
    if (offered.isEmpty()) {
      return moves.stream()
          .flatMap(move -> Undrawn.of(move).stream())
          .findFirst()
          .map(Undrawn::words)
          .orElse(
              "It could not be drawn, since the plan has it already, the file lacks a number that it"
                  + " takes, or the shelf has no such implant: "
                  + inWords(moves)
                  + ".");
    }
    long ways = offered.values().stream().mapToLong(Long::longValue).sum();
    String tried = inWords(moves.stream().filter(offered::containsKey).toList());
    return search.wasCut()
        ? "The number of tries ran out before all ways were tried: " + tried + "."
        : ways
            + (ways == 1 ? " way was tried: " : " ways were tried: ")
            + tried
            + (ways == 1
                ? ". It leaves this open, or opens something as grave."
                : ". Each leaves this open, or opens something as grave.");
  }

  private String inWords(List<String> moves) {
    return moves.stream()
        .map(move -> rules.moves().words().getOrDefault(move, move))
        .collect(Collectors.joining("; "));
  }
}
