package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;

/** Tells how each rule of a principle came to fire, or not to, for one subject. */
public final class Tracer {

  private final RuleSet rules;
  private final PlainRules plain;

  /** Prepare to trace verdicts of these rules. */
  public Tracer(RuleSet rules) {
    this.rules = rules;
    this.plain = PlainRules.of(RuleFiles.built());
  }

  /** Return how each rule of the principle stands, in the order of its file. */
  public List<RuleTrace> trace(Judgement judgement) {
    Card card = judgement.card();
    List<World> worlds = rules.worlds(card).of(judgement.readings());
    return plain.of(card.id()).stream().map(rule -> trace(rule, judgement, worlds)).toList();
  }

  private RuleTrace trace(PlainRule rule, Judgement judgement, List<World> worlds) {
    return new RuleTrace(
        rule.name(),
        rule.fault().map(fault -> new RuleTrace.Finds(fault.severity(), fault.limit())),
        holds(worlds, rule::fires),
        rule.conditions().stream()
            .map(
                any ->
                    new RuleTrace.ConditionTrace(
                        words(any, judgement), holds(worlds, w -> PlainRule.holds(any, w))))
            .toList());
  }

  private static RuleTrace.Holds holds(List<World> worlds, Predicate<World> test) {
    long there = worlds.stream().filter(test).count();
    if (there == worlds.size()) {
      return RuleTrace.Holds.ALWAYS;
    }
    return there == 0 ? RuleTrace.Holds.NEVER : RuleTrace.Holds.SOMETIMES;
  }

  private String words(List<PlainTest> any, Judgement judgement) {
    return String.join(", or ", any.stream().map(test -> words(test, judgement)).toList());
  }

  private String words(PlainTest test, Judgement judgement) {
    Definition definition = definition(test.need(), judgement.card());
    String title = definition.title();
    if (test instanceof PlainTest.Word word) {
      List<String> said =
          new TreeSet<>(word.words()).stream().map(one -> one.replace('-', ' ')).toList();
      return title + (word.isOne() ? " is " : " is not ") + String.join(" or ", said);
    }
    if (test instanceof PlainTest.Amount number) {
      return title
          + " "
          + number.comparison().words()
          + " "
          + limit(number.limit(), judgement.limits())
          + unit(definition);
    }
    return title + " is there";
  }

  private static String limit(String name, Map<String, Dimension> limits) {
    Dimension here = limits.get(name);
    return here == null ? "a limit that is not set here" : here.numbers();
  }

  private static String unit(Definition definition) {
    String unit = definition.shownUnit();
    return unit.isEmpty() ? "" : " " + unit;
  }

  /** Return the measure that a need of a card reads. */
  private Definition definition(String need, Card card) {
    String measure = card.needs().get(need);
    if (measure == null) {
      throw new IllegalStateException(card.id() + " has no need " + need);
    }
    return rules.definition(measure);
  }
}
