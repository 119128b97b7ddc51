package org.bonewright.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.shelf.UsualShelf;

/** Breadth first over the moves of all that is grave and unmet, blind to any order. */
final class BlindSearch {

  private final RuleSet rules;
  private final PlanJudge judge;
  private final Options options = new Options(UsualShelf.shelf());
  private final Set<String> seen = new HashSet<>();
  private List<PlanInFile> level;

  BlindSearch(RuleSet rules, DrawnCase drawn) {
    this.rules = rules;
    this.judge = new PlanJudge(rules);
    this.level = List.of(PlanInFile.of(drawn.bytes(), "plan-a").orElseThrow().alone());
  }

  boolean leavesNothingGraveUnmet() {
    return level.stream().anyMatch(file -> unmet(file).isEmpty());
  }

  void oneMoveFarther() {
    List<PlanInFile> next = new ArrayList<>();
    for (PlanInFile file : level) {
      for (Place place : unmet(file)) {
        for (String move : rules.card(place.principle()).map(Card::remedyMoves).orElseThrow()) {
          options.of(file, move, place.subject()).stream()
              .map(Option::file)
              .filter(option -> seen.add(option.text()))
              .filter(option -> judge.judged(option).isPresent())
              .forEach(next::add);
        }
      }
    }
    level = next;
  }

  private List<Place> unmet(PlanInFile file) {
    return judge.judged(file).orElseThrow().found().entrySet().stream()
        .filter(entry -> entry.getValue().standing().verdict() == VerdictKind.UNMET)
        .filter(entry -> entry.getValue().standing().grave().compareTo(Severity.MAJOR) >= 0)
        .map(Map.Entry::getKey)
        .toList();
  }
}
