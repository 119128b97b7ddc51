package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Construct;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a plate of the same size broke or bent at an earlier operation. */
final class PlateFamilyFailedBefore implements Measure {

  private static final Set<FailureMode> GAVE_WAY =
      EnumSet.of(
          FailureMode.PLATE_BENT,
          FailureMode.PLATE_BROKEN,
          FailureMode.PLATE_BROKEN_AT_EMPTY_HOLE,
          FailureMode.PLATE_BROKEN_AT_FILLED_HOLE);

  @Override
  public Definition definition() {
    return new Definition(
        "plate-family-failed-before",
        "A plate of this size broke or bent before",
        Definition.yesOrNo(),
        "yes when an earlier operation ended with a broken or bent plate of the size of the longest"
            + " plate now",
        List.of("operations/outcome/mode", "operations/fixation/family"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<PlacedPlate> plate = scene.mainPlate();
    if (plate.isEmpty()) {
      return Plates.noPlate(scene);
    }
    Optional<Plate.Family> family = plate.get().plate().family();
    List<MissingFact> missing = new ArrayList<>();
    List<Operation> before = scene.doneBefore();
    for (int i = 0; i < before.size(); i++) {
      Operation earlier = before.get(i);
      Construct then = Construct.after(before.subList(0, i + 1));
      Optional<Boolean> gaveWay = gaveWay(earlier);
      Optional<Boolean> same = hadPlateOf(then, family);
      if (gaveWay.orElse(true) && same.orElse(true)) {
        if (gaveWay.isPresent() && same.isPresent()) {
          return Reading.word("yes", "at " + earlier.id());
        }
        missing.add(question(scene, earlier, gaveWay.isEmpty()));
      }
    }
    return missing.isEmpty()
        ? Reading.word("no", "none recorded")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "not told of every earlier plate",
            missing.toArray(MissingFact[]::new));
  }

  private static MissingFact question(Scene scene, Operation earlier, boolean howItEnded) {
    return howItEnded
        ? scene.missingInCase(
            earlier.id() + "/outcome/mode", "How did " + earlier.id() + " fail: what broke?")
        : scene.missingInCase(
            earlier.id() + "/fixation/family",
            "What size of plate was used at " + earlier.id() + ", and what size is used now?");
  }

  /** Return whether a plate gave way; nothing where the file does not tell how it ended. */
  private static Optional<Boolean> gaveWay(Operation earlier) {
    Optional<FailureMode> mode = earlier.outcome().flatMap(Outcome::mode);
    if (mode.isPresent()) {
      return mode.map(GAVE_WAY::contains);
    }
    boolean untold =
        earlier
            .outcome()
            .map(Outcome::result)
            .map(r -> r == Outcome.Result.FAILED || r == Outcome.Result.UNKNOWN)
            .orElse(true);
    return untold ? Optional.empty() : Optional.of(false);
  }

  /** Return whether a plate of this size held the bone; nothing where that is not told. */
  private static Optional<Boolean> hadPlateOf(Construct then, Optional<Plate.Family> family) {
    List<Plate> plates = then.of(Plate.class);
    if (family.isPresent() && plates.stream().anyMatch(p -> p.family().equals(family))) {
      return Optional.of(true);
    }
    boolean untold =
        !then.known()
            || (family.isEmpty() && !plates.isEmpty())
            || plates.stream().anyMatch(p -> p.family().isEmpty());
    return untold ? Optional.empty() : Optional.of(false);
  }
}
