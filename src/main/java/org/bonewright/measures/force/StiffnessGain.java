package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.mechanics.answer.Stiffness;
import org.bonewright.mechanics.model.MechanicalModel;

/**
 * How many times stiffer a construct is than the one whose failure led to it, under the same sets
 * of assumptions of bone and load. Each set compares the two on one bone.
 */
final class StiffnessGain implements Measure {

  private static final double MUCH = 1000;

  @Override
  public Definition definition() {
    return new Definition(
        "stiffness-gain",
        "Gain in stiffness",
        Definition.ratio(),
        "stiffness of the construct over that of the last one that failed, under small loads: in its"
            + " softest bending, or in torsion, whichever gained more. Both are taken under the same"
            + " sets of assumptions. None where either has no plate",
        List.of("operations/fixation", "operations/reduction", "bone/sections"),
        "frame model");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> failed = scene.failedBefore();
    if (failed.isEmpty()) {
      return new Reading.None("no operation before it");
    }
    Sketch.Attempt then = SketchMaker.of(failed.get());
    Sketch.Attempt now = SketchMaker.of(scene);
    for (Sketch.Attempt attempt : List.of(then, now)) {
      if (attempt instanceof Sketch.Attempt.Outside outside) {
        return new Reading.None(outside.why());
      }
    }
    for (Sketch.Attempt attempt : List.of(then, now)) {
      if (attempt instanceof Sketch.Attempt.Untold untold) {
        return new Reading.Unknown(untold.missing());
      }
    }
    return gain(((Sketch.Attempt.Ready) then).sketch(), ((Sketch.Attempt.Ready) now).sketch())
        .orElseGet(
            () ->
                Reading.unknown(
                    scene.missing(
                        "fixation",
                        "The model finds no answer here: are all screws and their holes told?")));
  }

  private static Optional<Reading> gain(Sketch then, Sketch now) {
    Optional<Gain> nominal = Gain.of(then, now, Draw.MIDDLE);
    List<Draw> all = Draws.all();
    List<Optional<Gain>> found =
        IntStream.range(0, all.size())
            .parallel()
            .mapToObj(i -> Gain.of(then, now, all.get(i)))
            .toList();
    List<Draw> draws = new ArrayList<>();
    List<Double> gains = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (found.get(i).isPresent()) {
        draws.add(all.get(i));
        gains.add(found.get(i).get().larger());
      }
    }
    if (nominal.isEmpty() || draws.size() < all.size() - Forces.UNANSWERED) {
      return Optional.empty();
    }
    return Optional.of(
        new Reading.Sampled(
            nominal.get().larger(),
            gains,
            nominal.get().shown(),
            Decides.of(gains, draws),
            now.narrows()));
  }

  /**
   * The stiffness of two constructs in N·m per degree.
   *
   * @param then of the one that failed
   * @param now of the one that follows it
   */
  private record Gain(Stiffness then, Stiffness now) {

    static Optional<Gain> of(Sketch then, Sketch now, Draw draw) {
      return stiffness(then, draw).flatMap(a -> stiffness(now, draw).map(b -> new Gain(a, b)));
    }

    private static Optional<Stiffness> stiffness(Sketch sketch, Draw draw) {
      return new MechanicalModel(new Builder(sketch, draw).build(List.of())).stiffness();
    }

    private static double softest(Stiffness stiffness) {
      return Math.min(
          stiffness.bendingStrong(),
          Math.min(stiffness.bendingWeakPlus(), stiffness.bendingWeakMinus()));
    }

    double larger() {
      double bending = softest(now) / softest(then);
      double torsion = now.torsion() / then.torsion();
      return Math.min(MUCH, Math.max(bending, torsion));
    }

    String shown() {
      return "bending from "
          + number(softest(then))
          + " to "
          + number(softest(now))
          + ", torsion from "
          + number(then.torsion())
          + " to "
          + number(now.torsion())
          + " N·m per degree";
    }

    private static String number(double value) {
      double scale = Math.pow(10, 2 - Math.ceil(Math.log10(Math.max(1e-3, value))));
      return Dimension.number(Math.rint(value * scale) / scale);
    }
  }
}
