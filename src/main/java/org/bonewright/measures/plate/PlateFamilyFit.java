package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** How the strongest plate, or a pair of plates, suits the bone. */
final class PlateFamilyFit implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-family-fit",
        "Plate size for this bone",
        Definition.words("right", "heavy", "light", "soft", "tubular"),
        "right: femur broad large-fragment, or two large ones at 60 to 120 degrees; tibia large"
            + " fragment, or two 3.5; humerus narrow large-fragment, or two 3.5; radius and ulna 3.5;"
            + " clavicle 3.5 or shaft-strength 2.7, a reconstruction plate unless broken up. Heavy:"
            + " a broad plate on the humerus, a large one on forearm or clavicle. Light: a single 3.5"
            + " on the humerus. Tubular: that on humerus or femur. Soft: any other. The strongest"
            + " plate counts",
        List.of(
            "operations/fixation/family",
            "operations/fixation/surface",
            "bone/name",
            "pattern-class"),
        "AO Principles textbook, from memory");
  }

  @Override
  public Reading take(Scene scene) {
    List<Plate> plates = scene.construct().of(Plate.class);
    if (plates.isEmpty()) {
      return Plates.noPlate(scene);
    }
    Set<String> possible = new TreeSet<>();
    for (boolean brokenUp : patterns(scene)) {
      PlateFit fit = strongest(scene.boneName(), plates, brokenUp);
      List<Plate> untold = plates.stream().filter(plate -> plate.family().isEmpty()).toList();
      if (fit != PlateFit.RIGHT && !untold.isEmpty()) {
        return new Reading.Unknown(
            untold.stream().map(plate -> PlateQuestions.family(scene, plate)).toList());
      }
      if (fit != PlateFit.RIGHT && !scene.construct().known()) {
        return Reading.unknown(scene.missing("fixation", "Which implants are in the bone?"));
      }
      Set<Boolean> paired =
          fit == PlateFit.RIGHT ? Set.of(false) : PlatePair.does(scene.boneName(), plates);
      if (paired.contains(true)) {
        possible.add(PlateFit.RIGHT.word());
      }
      if (paired.contains(false)) {
        possible.add(fit.word());
      }
    }
    List<MissingFact> missing = new ArrayList<>(scene.read("pattern-class").missing());
    plates.stream()
        .filter(plate -> plate.surface().isEmpty())
        .forEach(plate -> missing.add(PlateQuestions.surface(scene, plate)));
    return Reading.words(possible, Kind.FACT, shown(plates), missing.toArray(MissingFact[]::new));
  }

  private static String shown(List<Plate> plates) {
    return plates.stream()
        .map(plate -> plate.family().map(Words::of).orElse("size not stated"))
        .collect(Collectors.joining(", "));
  }

  private static List<Boolean> patterns(Scene scene) {
    List<Boolean> brokenUp = new ArrayList<>();
    if (scene.possibly("pattern-class", "simple") || scene.possibly("pattern-class", "wedge")) {
      brokenUp.add(false);
    }
    if (scene.possibly("pattern-class", "multifragmentary")
        || scene.possibly("pattern-class", "defect")) {
      brokenUp.add(true);
    }
    return brokenUp;
  }

  private static PlateFit strongest(BoneName bone, List<Plate> plates, boolean brokenUp) {
    return plates.stream()
        .flatMap(plate -> plate.family().stream())
        .map(family -> PlateFit.of(bone, family, brokenUp))
        .min(Comparator.naturalOrder())
        .orElse(PlateFit.TUBULAR);
  }
}
