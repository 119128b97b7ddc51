package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import org.bonewright.measures.Reading;

/**
 * A principle that is slightly wrong.
 *
 * @param what is wrong
 * @param card its card
 * @param rules its rules, read as data
 */
record Mutant(String what, Card card, List<PlainRule> rules) {

  private static final PlainRules PLAIN = PlainRules.of(RuleFiles.built());

  /** Return the principle as it is. */
  static Mutant none(Card card) {
    return new Mutant("nothing", card, PLAIN.of(card.id()));
  }

  /**
   * What rules say of a world.
   *
   * @param verdict the verdict
   * @param faults every limit that is not kept, where it is unmet; a certain one is named to people
   */
  record Said(WorldVerdict verdict, Map<String, Severity> faults) {

    /** Return whether another says the same but for the names of limits. */
    boolean isAsGrave(Said other) {
      return verdict.kind() == other.verdict.kind()
          && verdict.severity() == other.verdict.severity();
    }
  }

  /** Return what its rules say of a world. */
  Said said(World world) {
    Verdicts verdicts = verdicts(List.of(world));
    WorldVerdict verdict = verdicts.of(world);
    boolean unmet = verdict.kind() == VerdictKind.UNMET;
    return new Said(verdict, unmet ? verdicts.faults(world) : Map.of());
  }

  /** Return the verdict that it gives on some readings, by need. */
  Verdict verdict(Map<String, Reading> readings) {
    Worlds former = AllCells.RULES.worlds(card);
    List<World> left = former.of(readings);
    return new CardVerdict(former, left, verdicts(left), readings).verdict();
  }

  /** Return what its rules say of some worlds. */
  private Verdicts verdicts(List<World> worlds) {
    Verdicts verdicts = new Verdicts();
    for (World world : worlds) {
      for (PlainRule rule : rules) {
        if (rule.fires(world)) {
          rule.fault()
              .ifPresentOrElse(
                  fault -> verdicts.unmet(world, fault.severity().word(), fault.limit()),
                  () -> verdicts.applies(world));
        }
      }
    }
    return verdicts;
  }
}
