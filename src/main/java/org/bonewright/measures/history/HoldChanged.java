package org.bonewright.measures.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a revision holds the bone better than the operation before it. */
final class HoldChanged implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "hold-changed",
        "More hold than before",
        Definition.yesOrNo(),
        "yes against the last operation meant to unite the bone: another kind of implant, more"
            + " cortices or locking screws on the weaker side, locked instead of conventional, one"
            + " more plate or strut, a plate longer by a tenth, or cement or a nut at a screw where"
            + " there was none",
        List.of(
            "operations/fixation",
            "plate-length",
            "cortices-weaker-side",
            "locking-screws-weaker-side",
            "locked-only-side"),
        "what counts as a change is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Scene> then = scene.failedBefore();
    if (then.isEmpty()) {
      return new Reading.None("no operation before");
    }
    FactorChange change = new FactorChange(then.get(), scene);
    String against = "against " + then.get().operation().id();
    List<String> changed = new ArrayList<>();
    boolean open = false;
    for (Factor factor : List.of(Factor.HOLD, Factor.LENGTH)) {
      Optional<Boolean> answer = change.of(factor);
      open |= answer.isEmpty();
      answer.filter(yes -> yes).ifPresent(yes -> changed.add(factor.word()));
    }
    if (augmented(scene) && !augmented(then.get())) {
      changed.add("cement or nut");
    }
    if (!changed.isEmpty()) {
      return Reading.word("yes", against + ": " + String.join(", ", changed) + " changed");
    }
    return open
        ? Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            against + ": cannot be told",
            scene.missing(
                "fixation",
                "Does this operation hold the bone by more screws or a longer plate than the one"
                    + " before?"))
        : Reading.word("no", against + ": neither hold nor length changed");
  }

  private static boolean augmented(Scene scene) {
    return scene.construct().of(Plate.class).stream()
        .flatMap(plate -> plate.screws().stream().flatMap(List::stream))
        .anyMatch(row -> row.augmentation().isPresent());
  }
}
