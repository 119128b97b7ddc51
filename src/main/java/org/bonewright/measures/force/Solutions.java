package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.bonewright.casefile.BoneName;
import org.bonewright.mechanics.answer.Stiffness;
import org.bonewright.mechanics.model.MechanicalModel;

/** Solves constructs under every set of assumptions, each construct once. */
final class Solutions {

  /** At most so many sets may stay without an answer; they are left out. */
  static final int UNANSWERED = Draws.NUMBER / 20;

  private final Remembered<Task, Optional<Answers<Solved>>> solved =
      new Remembered<>(
          task -> {
            Solver solver = new Solver(task.sketch(), task.loads(), task.bone(), task.revision());
            return all(solver::under);
          });

  private final Remembered<Sketch, Optional<Stiff>> stiffness =
      new Remembered<>(
          sketch ->
              stiffness(sketch, Draw.MIDDLE)
                  .flatMap(
                      middle ->
                          all(draw -> stiffness(sketch, draw))
                              .map(sampled -> new Stiff(middle, sampled))));

  /** What to solve. */
  private record Task(Sketch sketch, List<Loading> loads, BoneName bone, boolean revision) {}

  /**
   * What came of it.
   *
   * @param draws the sets of assumptions that were answered, in order
   * @param samples one for each of them
   */
  record Answers<T>(List<Draw> draws, List<T> samples) {
    Answers {
      draws = List.copyOf(draws);
      samples = List.copyOf(samples);
    }
  }

  /**
   * How stiff a construct is.
   *
   * @param middle with everything in the middle of its range
   * @param sampled under every set of assumptions
   */
  record Stiff(Stiffness middle, Answers<Stiffness> sampled) {}

  private static Optional<Stiffness> stiffness(Sketch sketch, Draw draw) {
    return new MechanicalModel(new Builder(sketch, draw).taut())
        .stiffness()
        .filter(Solutions::resists);
  }

  /** What gives way under the smallest load has no stiffness. */
  private static boolean resists(Stiffness stiffness) {
    return DoubleStream.of(
            stiffness.bendingWeakPlus(),
            stiffness.bendingWeakMinus(),
            stiffness.bendingStrong(),
            stiffness.torsion())
        .allMatch(value -> value > 0 && Double.isFinite(value));
  }

  /** Return what a construct does under loads; empty where the model has too few answers. */
  Optional<Answers<Solved>> under(
      Sketch sketch, List<Loading> loads, BoneName bone, boolean revision) {
    return solved.of(new Task(sketch.bare(), loads, bone, revision));
  }

  /** Return how stiff a construct is; empty where the model has too few answers. */
  Optional<Stiff> stiffness(Sketch sketch) {
    return stiffness.of(sketch.bare());
  }

  private interface Solving<T> {
    Optional<T> under(Draw draw);
  }

  private static <T> Optional<Answers<T>> all(Solving<T> solving) {
    List<Draw> all = Draws.all();
    List<Optional<T>> found =
        IntStream.range(0, all.size()).parallel().mapToObj(i -> solving.under(all.get(i))).toList();
    List<Draw> draws = new ArrayList<>();
    List<T> samples = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (found.get(i).isPresent()) {
        draws.add(all.get(i));
        samples.add(found.get(i).get());
      }
    }
    return draws.size() < all.size() - UNANSWERED
        ? Optional.empty()
        : Optional.of(new Answers<>(draws, samples));
  }
}
