package org.bonewright.measures.plate;

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
    List<Dimension> screws = screws(plate);
    List<Dimension> cerclages = cerclages(scene);
    boolean open = false;
    for (EndToEnd pair : mayOverlap) {
      boolean certainly =
          screws.stream().anyMatch(level -> beside(pair.riser(), level, true))
              || cerclages.stream().anyMatch(level -> inOverlap(pair, level, true));
      boolean possibly =
          screws.stream().anyMatch(level -> beside(pair.riser(), level, false))
              || cerclages.stream().anyMatch(level -> inOverlap(pair, level, false));
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

  /** Return the levels of the plate's screws, as far as they are told. */
  private static List<Dimension> screws(PlacedPlate plate) {
    return plate
        .allHoles()
        .filter(hole -> plate.screwIn(hole).isPresent())
        .mapToObj(plate::level)
        .flatMap(Optional::stream)
        .toList();
  }

  private static List<Dimension> cerclages(Scene scene) {
    return scene.construct().of(Cerclage.class).stream()
        .flatMap(cerclage -> cerclage.atMm().stream())
        .map(at -> Dimension.stated(at, ""))
        .toList();
  }

  /** A cerclage holds the plate only where it goes around it, not elsewhere on the other metal. */
  private static boolean inOverlap(EndToEnd pair, Dimension level, boolean certainly) {
    return beside(pair.riser(), level, certainly)
        && within(pair.plate().near(), pair.plate().far(), level, certainly);
  }

  private static boolean beside(Riser riser, Dimension level, boolean certainly) {
    return within(riser.from(), riser.to(), level, certainly);
  }

  private static boolean within(Dimension from, Dimension to, Dimension level, boolean certainly) {
    return certainly
        ? level.min() >= from.max() && level.max() <= to.min()
        : level.max() >= from.min() && level.min() <= to.max();
  }
}
