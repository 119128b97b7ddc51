package org.bonewright.measures.setting;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether an operation, or a plan as a whole, sets out to bring the bone to union. */
final class MeantToUnite implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "meant-to-unite",
        "Meant to bring union",
        Definition.yesOrNo(),
        "no for an operation that was only a stage and did what it was for, for a stage of a plan"
            + " whose plates, nails and fixators a later stage takes out for others, and for one, or"
            + " a plan, that puts in neither implant nor graft, starts no transport and takes out no"
            + " bolt; else yes",
        List.of(
            "operations/outcome/result",
            "operations/fixation",
            "operations/biology",
            "operations/transport",
            "operations/removed"),
        "common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    if (steps.stream().allMatch(Operation::wasOnlyAStage)) {
      return Reading.word("no", "a stage; a further operation was always intended");
    }
    if (GivesWay.is(scene.subject())) {
      return Reading.word("no", "a stage; what holds the bone gives way to other metal later");
    }
    if (steps.stream().anyMatch(MeantToUnite::does)) {
      return Reading.word("yes", "implant, graft, transport or bolts out");
    }
    boolean told =
        steps.stream().allMatch(s -> s.fixation().isPresent() && s.biology().isPresent());
    return told
        ? Reading.word("no", "neither implant nor graft put in, no bolt taken out")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "what was put in is not stated",
            scene.missing("fixation", "Which implants and which graft were put in?"));
  }

  private static boolean does(Operation step) {
    return step.fixation().map(put -> !put.isEmpty()).orElse(false)
        || step.biology().map(grafts -> !grafts.isEmpty()).orElse(false)
        || step.transport().isPresent()
        || step.removed().stream().flatMap(List::stream).anyMatch(r -> !r.bolts().isEmpty());
  }
}
