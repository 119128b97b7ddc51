package org.bonewright.measures.healing;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the metal of a course stayed whole and in its place. */
final class MetalHolds implements Measure {

  private static final Set<FailureMode> WHOLE =
      EnumSet.of(
          FailureMode.NO_UNION_METAL_INTACT,
          FailureMode.CALLUS_LINE_OPEN,
          FailureMode.INFECTION,
          FailureMode.DEFORMITY);

  private final String id;
  private final Stretch stretch;

  MetalHolds(String id, Stretch stretch) {
    this.id = id;
    this.stretch = stretch;
  }

  @Override
  public Definition definition() {
    return new Definition(
        id,
        "Metal whole and in place",
        Definition.yesOrNo(),
        "no when the operation failed by metal that broke, bent, loosened or pulled out, or by a"
            + " fracture at its end; yes for any other failure, where it united or is under way, and"
            + " where nothing was operated on; "
            + stretch.inWords(),
        List.of("operations/outcome/result", "operations/outcome/mode"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Course> course = stretch.of(scene.subject());
    if (course.isEmpty()) {
      return new Reading.None("still to be done");
    }
    if (!course.get().beginningIsKnown()) {
      return Reading.unknown(course.get().missingDay());
    }
    Optional<Operation> operation = course.get().operation();
    if (operation.isEmpty()) {
      return Reading.word("yes", "no metal in place");
    }
    Optional<Outcome> outcome = operation.get().outcome();
    Optional<FailureMode> mode = outcome.flatMap(Outcome::mode);
    if (mode.isPresent()) {
      return Reading.word(WHOLE.contains(mode.get()) ? "yes" : "no", Words.of(mode.get()));
    }
    boolean stands =
        outcome
            .map(Outcome::result)
            .map(r -> r != Outcome.Result.FAILED && r != Outcome.Result.UNKNOWN)
            .orElse(false);
    String path = operation.get().id();
    return stands
        ? Reading.word("yes", Words.of(outcome.orElseThrow().result()))
        : Reading.unknown(
            new MissingFact(
                path + "/outcome/mode", "What became of " + path + ": did metal fail, and how?"));
  }
}
