package org.bonewright.measures.limb;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether an earlier operation left an incision over the bone. */
final class IncisedBefore implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "incised-before",
        "An old incision over the bone",
        Definition.yesOrNo(),
        "yes where an earlier operation was done through an open approach, no where all were closed",
        List.of("operations/approach"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> done = scene.doneBefore();
    if (done.stream()
        .flatMap(operation -> operation.approach().stream())
        .anyMatch(approach -> approach != Operation.Approach.CLOSED)) {
      return Reading.word("yes", "an open approach before");
    }
    Optional<Operation> untold =
        done.stream().filter(operation -> operation.approach().isEmpty()).findFirst();
    return untold
        .map(
            operation ->
                Reading.words(
                    Set.of("yes", "no"),
                    Kind.FACT,
                    "an approach is not told",
                    scene.missingInCase(
                        operation.id() + "/approach",
                        "By which approach was " + operation.id() + " done?")))
        .orElseGet(() -> Reading.word("no", "no open operation before"));
  }
}
