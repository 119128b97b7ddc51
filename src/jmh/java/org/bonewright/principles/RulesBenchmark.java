package org.bonewright.principles;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bonewright.Timed;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.measures.MeasureCatalogue;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.bonewright.measures.load.UsualLoads;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;

/**
 * What judging the demo with most operations costs, step by step, and what its rules cost beside the
 * same conditions evaluated in plain Java.
 */
public class RulesBenchmark extends Timed {

  private static final Path LARGEST = Path.of("cases/demo/ulna-nineteen-years/case.json");

  private final RuleSet rules = RuleSet.built();
  private final PlainRules plain = PlainRules.of(RuleFiles.built());
  private final List<Judgement> judgements = new ArrayList<>();
  private final List<World> worlds = new ArrayList<>();
  private List<Subject> subjects = List.of();
  private JudgedCase judged;

  /** Judge the case once, to have what each step takes. */
  @Setup
  public void judge() throws IOException {
    CaseFile file = new Intake().read(Files.readAllBytes(LARGEST)).caseFile().orElseThrow();
    judged = new Judge(rules).judge(file);
    subjects = judged.subjects();
    subjects.forEach(subject -> judgements.addAll(judged.of(subject)));
    worlds.addAll(worlds());
  }

  /** Every measure that a card needs, of every subject; forces are remembered, not solved. */
  @Benchmark
  public int measures() {
    return measured(rules.measures());
  }

  /** The same with all forces solved under two hundred sets of assumptions. */
  @Benchmark
  public int measuresAndForces() {
    return measured(EveryMeasure.catalogue(UsualLoads.published()));
  }

  private int measured(MeasureCatalogue catalogue) {
    int read = 0;
    for (Subject subject : subjects) {
      Scene scene = new Scene(subject, catalogue);
      for (Card card : rules.cards()) {
        if (card.level() == 1 && Judge.concerns(card, subject)) {
          for (String measure : card.needs().values()) {
            read += scene.read(measure).shown().length();
          }
        }
      }
    }
    return read;
  }

  /** The worlds of every judgement, with their neighbours. */
  @Benchmark
  public List<World> worlds() {
    List<World> all = new ArrayList<>();
    for (Judgement judgement : judgements) {
      Worlds former = rules.worlds(judgement.card());
      List<World> own = former.of(judgement.readings());
      all.addAll(own);
      all.addAll(former.whateverTheModel(judgement.readings()));
      Turns.neighbours(former, own, judgement.readings()).values().forEach(all::addAll);
    }
    return all;
  }

  /** The compiled rules over all these worlds. */
  @Benchmark
  public Verdicts rules() {
    return rules.rules().judge(worlds);
  }

  /** The same conditions over the same worlds, in plain Java. */
  @Benchmark
  public int plainConditions() {
    int unmet = 0;
    for (World world : worlds) {
      unmet += plain.judge(world).kind() == VerdictKind.UNMET ? 1 : 0;
    }
    return unmet;
  }

  /** Everything together, forces remembered. */
  @Benchmark
  public JudgedCase judging() {
    return new Judge(rules).judge(judged.caseFile());
  }
}
