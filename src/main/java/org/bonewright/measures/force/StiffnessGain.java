package org.bonewright.measures.force;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.mechanics.answer.Stiffness;

/**
 * How many times stiffer a construct is than the one whose failure led to it, under the same sets
 * of assumptions of bone and load. Each set compares the two on one bone.
 */
final class StiffnessGain implements Measure {

  private static final double MUCH = 1000;
  private static final double FINEST = 0.01;

  private final Modelling modelling;

  StiffnessGain(Modelling modelling) {
    this.modelling = modelling;
  }

  @Override
  public Definition definition() {
    return new Definition(
        "stiffness-gain",
        "Gain in stiffness",
        Definition.ratio(),
        "stiffness of the construct over that of the last one that failed, under small loads: in its"
            + " softest bending, or in torsion, whichever gained more. Both are taken under the same"
            + " sets of assumptions. A line that has not united, and was not set again, is taken as"
            + " a gap of 1 mm. None where either is not modelled",
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
    Optional<Reading> refused = refused(then, now);
    if (refused.isPresent()) {
      return refused.get();
    }
    Sketch before = ((Sketch.Attempt.Ready) then).sketch().notUnited();
    Sketch after = ((Sketch.Attempt.Ready) now).sketch();
    boolean setAgain = scene.fixing().id().equals(scene.operation().id());
    return gain(before, setAgain ? after : after.notUnited())
        .orElseGet(() -> Reading.unknown(Forces.noAnswer(scene)));
  }

  /** Where one of them is not modelled, nobody needs to ask about the other. */
  private static Optional<Reading> refused(Sketch.Attempt then, Sketch.Attempt now) {
    List<Reading> refused =
        Stream.of(then, now)
            .filter(Refused.class::isInstance)
            .map(attempt -> ((Refused) attempt).reading())
            .toList();
    return refused.stream()
        .filter(Reading.None.class::isInstance)
        .findFirst()
        .or(() -> refused.stream().findFirst());
  }

  private Optional<Reading> gain(Sketch then, Sketch now) {
    return modelling
        .stiffness(then)
        .flatMap(before -> modelling.stiffness(now).map(after -> gain(before, after)));
  }

  /** Only sets that answer for both are compared. */
  private static Reading gain(Solutions.Stiff then, Solutions.Stiff now) {
    Solutions.Answers<Stiffness> before = then.sampled();
    Solutions.Answers<Stiffness> after = now.sampled();
    List<Draw> draws = new ArrayList<>();
    List<Double> gains = new ArrayList<>();
    for (int i = 0; i < before.draws().size(); i++) {
      int there = after.draws().indexOf(before.draws().get(i));
      if (there >= 0) {
        draws.add(before.draws().get(i));
        gains.add(new Gain(before.samples().get(i), after.samples().get(there)).larger());
      }
    }
    String working = new Gain(then.middle(), now.middle()).shown();
    return new Reading.Sampled(
        Middle.of(gains), gains, working, Decides.among(draws).of(gains), List.of());
  }

  /**
   * The stiffness of two constructs in N·m per degree.
   *
   * @param then of the one that failed
   * @param now of the one that follows it
   */
  private record Gain(Stiffness then, Stiffness now) {

    private static double softest(Stiffness stiffness) {
      return Math.min(
          stiffness.bendingStrong(),
          Math.min(stiffness.bendingWeakPlus(), stiffness.bendingWeakMinus()));
    }

    double larger() {
      double bending = softest(now) / softest(then);
      double torsion = now.torsion() / then.torsion();
      return Math.min(MUCH, Math.rint(Math.max(bending, torsion) / FINEST) * FINEST);
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
