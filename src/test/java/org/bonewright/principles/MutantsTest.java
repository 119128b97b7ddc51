package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.principles.PlainRule.Fault;
import org.bonewright.principles.PlainTest.Comparison;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every way in which a rule could be slightly wrong shows in some cell: a comparison turned or made
 * strict, a word the wrong way round, a grade changed. What is left out shows too: {@link
 * DeadPartsTest}.
 */
class MutantsTest {

  private static final PlainRules PLAIN = PlainRules.of(RuleFiles.built());

  /** Equal holds in a single point, so that no rule means to be turned into it. */
  private static final List<Comparison> TURNS =
      List.of(Comparison.BELOW, Comparison.AT_MOST, Comparison.ABOVE, Comparison.AT_LEAST);

  /**
   * A rule that is slightly wrong.
   *
   * @param what is wrong
   * @param rules all rules of the principle, with it
   */
  private record Mutant(String what, List<PlainRule> rules) {}

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void every_mutant_of_a_rule_changes_a_cell(Card card) {
    List<PlainRule> rules = PLAIN.of(card.id());
    List<String> survivors = new ArrayList<>();
    for (Mutant mutant : mutants(rules)) {
      boolean changes =
          AllCells.of(card).stream()
              .anyMatch(world -> !said(mutant.rules(), world).equals(said(rules, world)));
      if (!changes) {
        survivors.add(mutant.what());
      }
    }
    assertThat(survivors).isEmpty();
  }

  /**
   * What rules say of a world.
   *
   * @param verdict the verdict
   * @param faults every limit that is not kept
   */
  private record Said(WorldVerdict verdict, Map<String, Severity> faults) {}

  private static Said said(List<PlainRule> rules, World world) {
    Verdicts verdicts = new Verdicts();
    for (PlainRule rule : rules) {
      if (rule.fires(world)) {
        rule.fault()
            .ifPresentOrElse(
                fault -> verdicts.unmet(world, fault.severity().word(), fault.limit()),
                () -> verdicts.applies(world));
      }
    }
    return new Said(verdicts.of(world), verdicts.faults(world));
  }

  private static List<Mutant> mutants(List<PlainRule> rules) {
    List<Mutant> mutants = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      PlainRule rule = rules.get(i);
      for (int c = 0; c < rule.conditions().size(); c++) {
        for (Variant variant : variants(rule.conditions().get(c))) {
          List<List<PlainTest>> conditions = new ArrayList<>(rule.conditions());
          conditions.set(c, variant.tests());
          mutants.add(with(rules, i, variant.what(), conditions, rule.fault()));
        }
      }
      Optional<Fault> fault = rule.fault();
      if (fault.isPresent()) {
        Severity other = fault.get().severity() == Severity.NOTE ? Severity.MINOR : Severity.NOTE;
        mutants.add(
            with(
                rules,
                i,
                "found as " + other.word(),
                rule.conditions(),
                Optional.of(new Fault(other, fault.get().limit()))));
      }
    }
    return mutants;
  }

  private static Mutant with(
      List<PlainRule> rules,
      int index,
      String what,
      List<List<PlainTest>> conditions,
      Optional<Fault> fault) {
    PlainRule rule = rules.get(index);
    List<PlainRule> all = new ArrayList<>(rules);
    all.set(index, new PlainRule(rule.name(), rule.principle(), conditions, fault));
    return new Mutant(rule.name() + ": " + what, all);
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
