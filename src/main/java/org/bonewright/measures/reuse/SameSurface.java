package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a new plate goes on a surface that already carried one. */
final class SameSurface implements Measure {

  private static final double SAME = 30;

  @Override
  public Definition definition() {
    return new Definition(
        "same-surface-as-before",
        "Plate on a surface used before",
        Definition.yesOrNo(),
        "yes when a new plate lies within 30 degrees, round the bone, of the surface of a plate of"
            + " an earlier operation",
        List.of("operations/fixation/surface"),
        "the angle is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (NewScrew.plates(scene).isEmpty()) {
      return NewScrew.noPlate(scene);
    }
    Set<MissingFact> missing = new LinkedHashSet<>();
    List<Direction> used = new ArrayList<>();
    for (Operation operation : scene.subject().before()) {
      String id = operation.id();
      if (operation.fixation().isEmpty()) {
        missing.add(
            scene.missingInCase(id + "/fixation", "What did " + id + " put into the bone?"));
      }
      for (Implant implant : operation.fixation().orElse(List.of())) {
        if (implant instanceof Plate plate) {
          plate.surface().ifPresent(used::add);
          if (plate.surface().isEmpty()) {
            missing.add(
                scene.missingInCase(
                    id + "/fixation/" + plate.id() + "/surface",
                    "On which surface did " + id + "/" + plate.id() + " lie?"));
          }
        }
      }
    }
    if (used.isEmpty() && missing.isEmpty()) {
      return Reading.word("no", "no plate before");
    }
    for (var placed : NewScrew.plates(scene)) {
      Optional<Direction> here = placed.plate().surface();
      String id = placed.plate().id();
      if (here.isEmpty()) {
        missing.add(
            scene.missing("fixation/" + id + "/surface", "On which surface does " + id + " lie?"));
      } else if (used.stream().anyMatch(before -> before.angleTo(here.get()) < SAME)) {
        return Reading.word("yes", id + " lies where a plate lay before");
      }
    }
    return missing.isEmpty()
        ? Reading.word("no", "another surface")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "not every surface is recorded",
            missing.toArray(MissingFact[]::new));
  }
}
