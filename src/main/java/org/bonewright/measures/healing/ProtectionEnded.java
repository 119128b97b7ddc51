package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.LoadStep;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the bone was left to itself: metal out, or no limit to the load any more. */
final class ProtectionEnded implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "protection-ended",
        "Metal out or full load",
        Definition.yesOrNo(),
        "yes when what is planned takes metal out and puts none in, and when the last step of load"
            + " had ended by the last finding; no when it had not",
        List.of("plans/stages", "operations/aftercare/load", "findings/day"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Course course = Course.standing(scene.subject());
    if (scene.subject().planned()
        && scene.subject().steps().stream().allMatch(ProtectionEnded::onlyTakesOut)) {
      return Reading.word("yes", "metal comes out");
    }
    if (!course.beginningIsKnown()) {
      return Reading.unknown(course.missingDay());
    }
    Optional<Operation> operation = course.operation();
    MissingFact missing =
        new MissingFact(
            operation.map(Operation::id).orElse("nonOperative") + "/aftercare/load",
            "Until when was the load limited, and how far?");
    Optional<List<LoadStep>> load =
        operation.flatMap(Operation::aftercare).flatMap(Aftercare::load);
    Optional<Quantity> seen =
        course.findings().filter(f -> !f.isEmpty()).map(ProtectionEnded::lastDay);
    if (load.isEmpty() || seen.isEmpty()) {
      return Reading.unknown(missing);
    }
    if (load.get().isEmpty()) {
      return Reading.word("yes", "no limit to the load");
    }
    Quantity began = course.began().orElseThrow();
    Quantity limit = load.get().get(load.get().size() - 1).untilDay();
    if (began.max() + limit.max() <= seen.get().min()) {
      return Reading.word("yes", "load free by " + Diagnosis.day(seen.get()));
    }
    return began.min() + limit.min() > seen.get().max()
        ? Reading.word("no", "load limited on " + Diagnosis.day(seen.get()))
        : Reading.unknown(missing);
  }

  private static Quantity lastDay(List<Finding> findings) {
    return findings.get(findings.size() - 1).day();
  }

  private static boolean onlyTakesOut(Operation step) {
    return step.fixation().map(List::isEmpty).orElse(false)
        && step.removed().map(out -> !out.isEmpty()).orElse(false);
  }
}
