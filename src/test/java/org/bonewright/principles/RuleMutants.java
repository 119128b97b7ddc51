package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.principles.PlainRule.Fault;
import org.bonewright.principles.PlainTest.Comparison;

/** Every way in which one rule of a principle could be slightly wrong, each alone. */
final class RuleMutants {

  /** Equal holds in a single point, so that no rule means to be turned into it. */
  private static final List<Comparison> TURNS =
      List.of(Comparison.BELOW, Comparison.AT_MOST, Comparison.ABOVE, Comparison.AT_LEAST);

  private final Card card;
  private final List<PlainRule> rules;

  RuleMutants(Card card) {
    this.card = card;
    this.rules = Mutant.none(card).rules();
  }

  /** Return those with a comparison turned or made strict, or a word the wrong way round. */
  List<Mutant> conditions() {
    List<Mutant> mutants = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      PlainRule rule = rules.get(i);
      for (int c = 0; c < rule.conditions().size(); c++) {
        for (Variant variant : variants(rule.conditions().get(c))) {
          List<List<PlainTest>> conditions = new ArrayList<>(rule.conditions());
          conditions.set(c, variant.tests());
          mutants.add(with(i, variant.what(), conditions, rule.fault()));
        }
      }
    }
    return mutants;
  }

  /** Return those with another grade, one for each grade that there is. */
  List<Mutant> grades() {
    List<Mutant> mutants = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      PlainRule rule = rules.get(i);
      if (rule.fault().isPresent()) {
        Fault fault = rule.fault().get();
        for (Severity other : Severity.values()) {
          if (other != fault.severity()) {
            mutants.add(
                with(
                    i,
                    "found as " + other.word(),
                    rule.conditions(),
                    Optional.of(new Fault(other, fault.limit()))));
          }
        }
      }
    }
    return mutants;
  }

  private Mutant with(
      int index, String what, List<List<PlainTest>> conditions, Optional<Fault> fault) {
    PlainRule rule = rules.get(index);
    List<PlainRule> all = new ArrayList<>(rules);
    all.set(index, new PlainRule(rule.name(), rule.principle(), conditions, fault));
    return new Mutant(rule.name() + ": " + what, card, all);
  }

  /**
   * A condition that is slightly wrong.
   *
   * @param what is wrong
   * @param tests of which one must hold
   */
  private record Variant(String what, List<PlainTest> tests) {}

  private static List<Variant> variants(List<PlainTest> any) {
    List<Variant> variants = new ArrayList<>();
    for (int i = 0; i < any.size(); i++) {
      PlainTest test = any.get(i);
      for (PlainTest other : others(test)) {
        List<PlainTest> changed = new ArrayList<>(any);
        changed.set(i, other);
        variants.add(new Variant(test + " as " + other, changed));
      }
    }
    return variants;
  }

  private static List<PlainTest> others(PlainTest test) {
    List<PlainTest> others = new ArrayList<>();
    if (test instanceof PlainTest.Amount number) {
      TURNS.stream()
          .filter(turn -> turn != number.comparison())
          .forEach(turn -> others.add(new PlainTest.Amount(number.need(), turn, number.limit())));
    }
    if (test instanceof PlainTest.Word word) {
      others.add(new PlainTest.Word(word.need(), !word.isOne(), word.words()));
    }
    return others;
  }
}
