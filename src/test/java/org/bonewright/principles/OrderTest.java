package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.TypeMetaData;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Neither the order of facts nor that of rules makes a difference. */
class OrderTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void of_worlds_makes_no_difference(long seed) {
    List<World> worlds = AllCells.all();
    Collections.shuffle(worlds, new Random(seed));
    assertSameVerdicts(AllCells.RULES.rules().judge(worlds), worlds);
  }

  @ParameterizedTest
  @ValueSource(longs = {4, 5})
  void of_rules_makes_no_difference(long seed) {
    RuleSet shuffled = AllCells.RULES.with(shuffled(new Random(seed)));
    List<World> worlds = AllCells.all();
    assertThat(shuffled.rules().size()).isEqualTo(AllCells.RULES.rules().size());
    assertSameVerdicts(shuffled.rules().judge(worlds), worlds);
  }

  private static void assertSameVerdicts(Verdicts verdicts, List<World> worlds) {
    assertThat(worlds.stream().filter(w -> !verdicts.of(w).equals(AllCells.said(w)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {6, 7, 8})
  void of_facts_and_rules_of_precedence_makes_no_difference(long seed) {
    List<Object> facts = history();
    List<String> before = decided(AllCells.RULES.rules(), facts, facts);
    List<Object> shuffled = new ArrayList<>(facts);
    Random random = new Random(seed);
    Collections.shuffle(shuffled, random);
    assertThat(decided(AllCells.RULES.rules(), shuffled, facts)).isEqualTo(before);
    assertThat(decided(shuffled(random), shuffled, facts)).isEqualTo(before);
  }

  /** Every combination of course, family and verdict over four rounds. */
  private static List<Object> history() {
    List<Object> facts = new ArrayList<>();
    Random random = new Random(0);
    for (int round = 0; round < 4; round++) {
      String subject = "op-" + round;
      facts.add(
          new Course(
              subject,
              random.nextBoolean(),
              random.nextBoolean(),
              random.nextBoolean(),
              random.nextBoolean()));
      for (String family : List.of("infection", "compression", "graft", "plate", "safety")) {
        for (int i = 0; i < 5; i++) {
          String verdict = random.nextInt(3) == 0 ? "met" : "unmet";
          String principle = family + "-" + i;
          boolean disputed = random.nextInt(4) == 0;
          facts.add(new Judged(principle, family, "hold", subject, round, verdict, disputed));
        }
      }
    }
    return facts;
  }

  private static List<String> decided(RuleBase rules, List<Object> facts, List<Object> asked) {
    Decisions decisions = rules.decide(facts);
    List<String> decided = new ArrayList<>();
    for (Object fact : asked) {
      if (fact instanceof Judged judged) {
        List<SeverityStep> steps = decisions.steps(judged, Severity.CRITICAL, Severity.CRITICAL);
        List<SeverityStep> lower = decisions.steps(judged, Severity.NOTE, Severity.CRITICAL);
        decided.add(judged + " " + decisions.labels(judged) + " " + steps + " " + lower);
      }
    }
    return decided;
  }

  private static RuleBase shuffled(Random random) {
    List<Model> models = new ArrayList<>();
    RuleBase.models().forEach(model -> models.add(new Shuffled(model, random)));
    Collections.shuffle(models, random);
    return new RuleBase(models);
  }

  /** A model with its rules in another order. */
  private static final class Shuffled implements Model {

    private final Model model;
    private final List<Rule> rules;

    Shuffled(Model model, Random random) {
      this.model = model;
      this.rules = new ArrayList<>(model.getRules());
      Collections.shuffle(rules, random);
    }

    @Override
    public List<Rule> getRules() {
      return rules;
    }

    @Override
    public String getName() {
      return model.getName();
    }

    @Override
    public String getPackageName() {
      return model.getPackageName();
    }

    @Override
    @SuppressWarnings("rawtypes")
    public List<Global> getGlobals() {
      return model.getGlobals();
    }

    @Override
    public List<Query> getQueries() {
      return model.getQueries();
    }

    @Override
    public List<TypeMetaData> getTypeMetaDatas() {
      return model.getTypeMetaDatas();
    }

    @Override
    public List<EntryPoint> getEntryPoints() {
      return model.getEntryPoints();
    }
  }
}
