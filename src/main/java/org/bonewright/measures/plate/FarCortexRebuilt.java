package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether something stands in for the cortex opposite the plate. */
final class FarCortexRebuilt implements Measure {

  private static final double OPPOSITE_FROM = 60;
  private static final Set<Graft.Kind> FILLS =
      EnumSet.complementOf(
          EnumSet.of(
              Graft.Kind.GROWTH_FACTOR,
              Graft.Kind.MARROW,
              Graft.Kind.MEMBRANE,
              Graft.Kind.DECORTICATION));

  @Override
  public Definition definition() {
    return new Definition(
        "far-cortex-rebuilt",
        "Support opposite the plate",
        Definition.yesOrNo(),
        "yes when graft or spacer was put in at this operation or since the line was fixed, when a"
            + " strut lies inside the bone, or when a strut or a second plate lies 60 degrees or more"
            + " round the bone from the longest plate",
        List.of("operations/biology", "operations/fixation/surface", "operations/fixation/where"),
        "AO Principles textbook, from memory; graft counts wherever it lies, by our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.mainPlate().isEmpty()) {
      return Plates.noPlate(scene);
    }
    Plate main = scene.mainPlate().get().plate();
    List<MissingFact> open = new ArrayList<>();
    for (Operation step : since(scene)) {
      if (step.biology().isEmpty()) {
        open.add(
            scene.missing("biology", "Was graft put in at " + step.id() + ", and of which kind?"));
      } else if (step.biology().get().stream().anyMatch(graft -> FILLS.contains(graft.kind()))) {
        return Reading.word("yes", "graft at " + step.id());
      }
    }
    for (Strut strut : scene.construct().of(Strut.class)) {
      if (strut.where() == Strut.Where.INTRAMEDULLARY) {
        return Reading.word("yes", strut.id() + " inside the bone");
      }
      Optional<Boolean> opposite = opposite(main.surface(), strut.surface());
      if (opposite.orElse(false)) {
        return Reading.word("yes", strut.id() + " on the bone");
      }
      if (opposite.isEmpty()) {
        open.add(
            scene.missing(
                "fixation/" + strut.id() + "/surface",
                "On which surface does " + strut.id() + " lie, and on which the plate?"));
      }
    }
    for (PlacedPlate second : scene.plates().subList(1, scene.plates().size())) {
      Plate plate = second.plate();
      Optional<Boolean> opposite = opposite(main.surface(), plate.surface());
      if (opposite.orElse(false)) {
        return Reading.word("yes", "second plate " + plate.id());
      }
      if (opposite.isEmpty()) {
        open.add(PlateQuestions.surface(scene, plate));
      }
    }
    if (!scene.construct().known()) {
      open.add(scene.missing("fixation", "Which implants are in the bone?"));
    }
    return open.isEmpty()
        ? Reading.word("no", "no graft, strut or second plate")
        : Reading.words(
            Set.of("yes", "no"), Kind.FACT, "not told", open.toArray(MissingFact[]::new));
  }

  /** Return the operation that set the line as it stands, and those after it. */
  private static List<Operation> since(Scene scene) {
    String fixing = scene.fixing().id();
    return scene.subject().upToHere().stream()
        .dropWhile(operation -> !operation.id().equals(fixing))
        .toList();
  }

  private static Optional<Boolean> opposite(Optional<Direction> main, Optional<Direction> other) {
    return main.flatMap(a -> other.map(b -> a.angleTo(b) >= OPPOSITE_FROM));
  }
}
