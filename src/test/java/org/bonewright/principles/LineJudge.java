package org.bonewright.principles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.bonewright.principles.Examples.Line;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;

/** Judges the lines of one card, with all of its rules or with one of them left out. */
final class LineJudge {

  private static final KieBase KNOWLEDGE = KieBaseBuilder.createKieBaseFromModel(RuleBase.models());

  private final Card card;
  private final RuleSet rules;

  LineJudge(Card card, RuleSet rules) {
    this.card = card;
    this.rules = rules;
  }

  /** Return the verdict on a line. */
  Verdict verdict(Line line) {
    return judge(List.of(line), worlds -> rules.rules().judge(worlds)).get(line);
  }

  /** Return the verdicts on lines as they would be without one rule. */
  Map<Line, Verdict> without(Rule rule, List<Line> lines) {
    return judge(lines, worlds -> judge(worlds, rule));
  }

  /** Return the rules of the card. */
  List<Rule> rules() {
    return KNOWLEDGE.getKiePackages().stream()
        .flatMap(folder -> folder.getRules().stream())
        .filter(rule -> rule.getName().startsWith(card.id() + " "))
        .toList();
  }

  private Map<Line, Verdict> judge(List<Line> lines, Function<List<World>, Verdicts> rulesApplied) {
    Worlds former = rules.worlds(card);
    Map<Line, List<World>> worlds = new HashMap<>();
    List<World> all = new ArrayList<>();
    for (Line line : lines) {
      List<World> left = former.of(line.readings());
      worlds.put(line, left);
      all.addAll(left);
    }
    Verdicts said = rulesApplied.apply(all);
    Map<Line, Verdict> verdicts = new HashMap<>();
    worlds.forEach(
        (line, left) ->
            verdicts.put(line, new CardVerdict(former, left, said, line.readings()).verdict()));
    return verdicts;
  }

  private static Verdicts judge(List<World> worlds, Rule leftOut) {
    Verdicts verdicts = new Verdicts();
    KieSession session = KNOWLEDGE.newKieSession();
    try {
      session.setGlobal("verdicts", verdicts);
      worlds.forEach(session::insert);
      session.fireAllRules(match -> !match.getRule().getName().equals(leftOut.getName()));
    } finally {
      session.dispose();
    }
    return verdicts;
  }
}
