package org.bonewright.measures.force;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.load.PermittedLoads;

/** The construct of a scene, solved under every set of assumptions. */
sealed interface Forces {

  /**
   * At most so many sets may stay without an answer; they are left out, and the working says so.
   */
  int UNANSWERED = Draws.NUMBER / 20;

  /**
   * Solved.
   *
   * @param sketch what was built
   * @param nominal everything in the middle of its range
   * @param draws the sets of assumptions that were answered, in order
   * @param samples one for each of them
   * @param working what was assumed of line and load, in words
   */
  record Known(
      Sketch sketch, Solved nominal, List<Draw> draws, List<Solved> samples, String working)
      implements Forces {

    /** Return one number of it as a reading. */
    Reading reading(ToDoubleFunction<Solved> number) {
      List<Double> values = samples.stream().map(number::applyAsDouble).toList();
      return new Reading.Sampled(
          number.applyAsDouble(nominal),
          values,
          working,
          Decides.of(values, draws),
          sketch.narrows());
    }
  }

  /**
   * Facts are missing.
   *
   * @param missing what
   */
  record Untold(List<MissingFact> missing) implements Forces {}

  /**
   * The model has nothing to say.
   *
   * @param why as a short clause
   */
  record Outside(String why) implements Forces {}

  /** Return them for a scene under these loads, solved once. */
  static Forces of(Scene scene, PermittedLoads loads) {
    return scene.once("forces", () -> solve(scene, loads));
  }

  private static Forces solve(Scene scene, PermittedLoads loads) {
    Sketch.Attempt attempt = SketchMaker.of(scene);
    if (attempt instanceof Sketch.Attempt.Untold untold) {
      return new Untold(untold.missing());
    }
    if (attempt instanceof Sketch.Attempt.Outside outside) {
      return new Outside(outside.why());
    }
    Sketch sketch = ((Sketch.Attempt.Ready) attempt).sketch();
    Solver solver =
        new Solver(
            sketch,
            loads.of(scene).stream().map(Loading::of).toList(),
            scene.boneName(),
            scene.subject().isRevision());
    return known(sketch, solver)
        .orElseGet(
            () ->
                new Untold(
                    List.of(
                        scene.missing(
                            "fixation",
                            "The model finds no answer here: are all screws and their holes told?"))));
  }

  private static Optional<Forces> known(Sketch sketch, Solver solver) {
    Optional<Solved> nominal = solver.under(Draw.MIDDLE);
    if (nominal.isEmpty()) {
      return Optional.empty();
    }
    List<Draw> all = Draws.all();
    List<Optional<Solved>> solved =
        IntStream.range(0, all.size()).parallel().mapToObj(i -> solver.under(all.get(i))).toList();
    List<Draw> draws =
        IntStream.range(0, all.size())
            .filter(i -> solved.get(i).isPresent())
            .mapToObj(all::get)
            .toList();
    List<Solved> samples = solved.stream().flatMap(Optional::stream).toList();
    int left = all.size() - draws.size();
    String working =
        sketch.told() + (left == 0 ? "" : "; no answer in " + left + " of " + all.size());
    return left > UNANSWERED
        ? Optional.empty()
        : Optional.of(new Known(sketch, nominal.get(), draws, samples, working));
  }
}
