package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Cerclage;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the plate is held to the bone where it overlaps other metal. */
final class OverlapFixed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "riser-overlap-fixed",
        "Overlap with other metal is fixed",
        Definition.yesOrNo(),
        "yes when a screw of the longest plate or a cerclage stands in each stretch where the plate"
            + " overlaps the end of another implant",
        List.of(
            "bone/otherImplants",
            "operations/fixation/screws",
            "operations/fixation/place",
            "operations/fixation/atMm"),
        "common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.mainPlate().isEmpty()) {
      return Plates.noPlate(scene);
    }
    PlacedPlate plate = scene.mainPlate().get();
    Optional<List<EndToEnd>> pairs = PlateEndToRiser.pairs(scene);
    List<MissingFact> missing = Riser.missing(scene, scene.plates());
    if (pairs.isEmpty()) {
      return new Reading.Unknown(missing);
    }
    List<EndToEnd> mayOverlap =
        pairs.get().stream().filter(pair -> !pair.apart() && !pair.covered()).toList();
    if (mayOverlap.isEmpty()) {
      return new Reading.None("no overlap with other metal");
    }
    if (plate.plate().screws().isEmpty()) {
      return Reading.unknown(PlateQuestions.screws(scene, plate.plate()));
    }
    List<Dimension> fixed = levels(scene, plate);
    boolean open = false;
    for (EndToEnd pair : mayOverlap) {
      boolean certainly = fixed.stream().anyMatch(level -> inside(level, pair, true));
      boolean possibly = fixed.stream().anyMatch(level -> inside(level, pair, false));
      if (!possibly && pair.overlap()) {
        return Reading.word("no", "nothing holds the plate beside " + pair.riser().what());
      }
      open |= !certainly;
    }
    return open
        ? Reading.words(
            Set.of("yes", "no"), Kind.FACT, "not certain", missing.toArray(MissingFact[]::new))
        : Reading.word("yes", "a screw or cerclage in the overlap");
  }

  /** Return the levels of the plate's screws and of every cerclage, as far as they are told. */
  private static List<Dimension> levels(Scene scene, PlacedPlate plate) {
    List<Dimension> levels = new ArrayList<>();
    plate
        .allHoles()
        .filter(hole -> plate.screwIn(hole).isPresent())
        .forEach(hole -> plate.level(hole).ifPresent(levels::add));
    scene.construct().of(Cerclage.class).stream()
        .flatMap(cerclage -> cerclage.atMm().stream())
        .forEach(at -> levels.add(Dimension.stated(at, "")));
    return levels;
  }

  private static boolean inside(Dimension level, EndToEnd pair, boolean certainly) {
    Dimension from = pair.riser().from();
    Dimension to = pair.riser().to();
    return certainly
        ? level.min() >= from.max() && level.max() <= to.min()
        : level.max() >= from.min() && level.min() <= to.max();
  }
}
