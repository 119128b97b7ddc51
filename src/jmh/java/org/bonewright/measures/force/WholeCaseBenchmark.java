package org.bonewright.measures.force;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.Timed;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.measures.MeasureCatalogue;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.bonewright.measures.load.PermittedLoads;
import org.bonewright.measures.load.UsualLoads;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the forces of a whole history cost: the demo of a femur with three operations and a plan, each
 * under every load of its first six weeks. Look at the median (p0.50).
 */
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 4, time = 4)
public class WholeCaseBenchmark extends Timed {

  private static final Path CASE = Path.of("cases/demo/femur-three-operations/case.json");

  private static final List<String> MEASURES =
      ForceMeasures.all(UsualLoads.published()).stream().map(m -> m.definition().id()).toList();

  private final List<Subject> subjects = subjects();
  private final List<Construct> constructs = constructs();

  /** A construct, and what it bears. */
  private record Construct(
      Sketch sketch, List<Loading> loads, BoneName bone, boolean revision) {}

  private static List<Subject> subjects() {
    try {
      CaseFile file = new Intake().read(Files.readAllBytes(CASE)).caseFile().orElseThrow();
      return Subject.of(file).stream()
          .filter(subject -> subject.scope() != Subject.Scope.STAGE)
          .toList();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static MeasureCatalogue catalogue() {
    return EveryMeasure.catalogue(UsualLoads.published());
  }

  private List<Construct> constructs() {
    List<Construct> all = new ArrayList<>();
    PermittedLoads permitted = new PermittedLoads(UsualLoads.published());
    for (Subject subject : subjects) {
      Scene scene = new Scene(subject, catalogue());
      if (SketchMaker.of(scene) instanceof Sketch.Attempt.Ready ready) {
        all.add(
            new Construct(
                ready.sketch(),
                permitted.of(scene).stream().map(Loading::of).toList(),
                scene.boneName(),
                subject.isRevision()));
      }
    }
    return List.copyOf(all);
  }

  /** Every construct under every load, all assumptions in the middle of their ranges. */
  @Benchmark
  public List<Optional<Solved>> withoutUncertainty() {
    return constructs.stream()
        .map(c -> new Solver(c.sketch(), c.loads(), c.bone(), c.revision()).under(Draw.MIDDLE))
        .toList();
  }

  /** The same under 200 sets of assumptions, on all cores. */
  @Benchmark
  public List<Optional<Solutions.Answers<Solved>>> with200Samples() {
    Solutions solutions = new Solutions();
    return constructs.stream()
        .map(c -> solutions.under(c.sketch(), c.loads(), c.bone(), c.revision()))
        .toList();
  }

  /** All that a review asks of forces: that, gains in stiffness, and how plates let go. */
  @Benchmark
  public List<Reading> everyMeasureOfForces() {
    List<Reading> readings = new ArrayList<>();
    MeasureCatalogue fresh = catalogue();
    for (Subject subject : subjects) {
      Scene scene = new Scene(subject, fresh);
      MEASURES.forEach(measure -> readings.add(scene.read(measure)));
    }
    return readings;
  }
}
