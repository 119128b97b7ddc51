package org.bonewright.measures.nail;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the subject puts in a nail. */
final class NailPutIn implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nail-put-in",
        "A nail put in",
        Definition.yesOrNo(),
        "yes when the operation puts in a nail; one that an earlier operation left is not counted",
        List.of("operations/fixation"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    boolean put =
        steps.stream()
            .flatMap(step -> step.fixation().stream().flatMap(List::stream))
            .anyMatch(Nail.class::isInstance);
    if (put) {
      return Reading.word("yes", "a nail put in");
    }
    return steps.stream().allMatch(step -> step.fixation().isPresent())
        ? Reading.word("no", "no nail put in")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "the implants are not stated",
            scene.missing("fixation", "Which implants were put in?"));
  }
}
