package org.bonewright.measures.reuse;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the subject itself puts in an implant of one type. */
final class NewImplant implements Measure {

  private final String noun;
  private final Class<? extends Implant> type;

  NewImplant(String noun, Class<? extends Implant> type) {
    this.noun = noun;
    this.type = type;
  }

  @Override
  public Definition definition() {
    return new Definition(
        "new-" + noun,
        "A new " + noun + " is put in",
        Definition.yesOrNo(),
        "yes when the operation, or a stage of the plan, puts in a "
            + noun
            + " that stays at its end",
        List.of("operations/fixation"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    List<String> ids = steps.stream().map(Operation::id).toList();
    boolean put =
        scene.construct().implants().stream()
            .anyMatch(held -> ids.contains(held.operation()) && type.isInstance(held.implant()));
    if (put) {
      return Reading.word("yes", "a new " + noun);
    }
    if (steps.stream().allMatch(step -> step.fixation().isPresent())) {
      return Reading.word("no", "no new " + noun);
    }
    return Reading.words(
        Set.of("yes", "no"),
        Kind.FACT,
        "what was put in is not stated",
        scene.missing("fixation", "Which implants were put in?"));
  }
}
