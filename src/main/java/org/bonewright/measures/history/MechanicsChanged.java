package org.bonewright.measures.history;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether an operation changes the mechanics of the one before it. */
final class MechanicsChanged implements Measure {

  private static final Set<Factor> MECHANICAL =
      EnumSet.of(Factor.CONCEPT, Factor.HOLD, Factor.LENGTH, Factor.GAP, Factor.NAIL);

  @Override
  public Definition definition() {
    return new Definition(
        "mechanics-changed",
        "Mechanics changed",
        Definition.yesOrNo(),
        "yes when at least one of concept, hold, length, gap and nail changes for the better"
            + " against the last operation that was meant to unite the bone",
        List.of("operations/fixation", "operations/reduction", "operations/compression"),
        "what counts as a change is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> then = scene.failedBefore();
    if (then.isEmpty()) {
      return new Reading.None("no operation before");
    }
    FactorChange change = new FactorChange(then.get(), scene);
    List<String> changed = new ArrayList<>();
    List<String> open = new ArrayList<>();
    for (Factor factor : MECHANICAL) {
      Optional<Boolean> answer = change.of(factor);
      if (answer.isEmpty()) {
        open.add(factor.word());
      } else if (answer.get()) {
        changed.add(factor.word());
      }
    }
    if (!changed.isEmpty()) {
      return Reading.word("yes", String.join(", ", changed) + " changed");
    }
    return open.isEmpty()
        ? Reading.word("no", "concept, hold, length, gap and nail as before")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            String.join(", ", open) + " cannot be told",
            scene.missing(
                "changes",
                "What does this operation change of "
                    + String.join(", ", open)
                    + " against the one before?"));
  }
}
