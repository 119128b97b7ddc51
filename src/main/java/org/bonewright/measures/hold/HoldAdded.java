package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What holds the bone beside the screws of one plate. */
final class HoldAdded implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "hold-added",
        "Hold beside the plate screws",
        Definition.words("nail", "second-plate", "strut", "cement", "nothing", "other"),
        "the first of: a nail; two plates with screws; a strut that a plate screw crosses on either"
            + " side of the zone; plate screws in cement on either side, 10 mm or more from the zone"
            + " and without a confirmatory sign of infection. Nothing where a plate is alone; other"
            + " where neither plate nor nail holds the bone",
        List.of(
            "operations/fixation",
            "operations/fixation/fromMm",
            "operations/fixation/screws/augmentation",
            "plate-used",
            "nail-used",
            "confirmatory-signs"),
        "options in poor bone: AO Principles textbook; distance of cement from memory");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("nail-used", "yes")) {
      return Reading.word("nail", "a nail is in place");
    }
    if (scene.construct().of(Plate.class).isEmpty()) {
      return scene.construct().known()
          ? Reading.word("other", "neither plate nor nail in place")
          : Reading.unknown(implantsMissing(scene));
    }
    long plates =
        scene.construct().of(Plate.class).stream()
            .filter(plate -> plate.screws().map(rows -> !rows.isEmpty()).orElse(true))
            .count();
    if (plates > 1) {
      return Reading.word("second-plate", plates + " plates in place");
    }
    return besideOnePlate(scene);
  }

  private static Reading besideOnePlate(Scene scene) {
    AnchoredBeside beside = new AnchoredBeside(scene);
    Certainty strut = beside.strut();
    if (strut == Certainty.YES && scene.construct().known()) {
      return Reading.word("strut", "screws on both sides pass through a strut");
    }
    Certainty cement = beside.cement();
    List<MissingFact> missing = new ArrayList<>();
    Set<String> possible = new TreeSet<>();
    if (!scene.construct().known()) {
      possible.addAll(Set.of("nail", "second-plate"));
      missing.add(implantsMissing(scene));
    }
    if (strut != Certainty.NO) {
      possible.add("strut");
    }
    if (strut == Certainty.OPEN) {
      missing.add(
          scene.missing(
              "fixation/place", "Which plate screws on either side of the zone cross the strut?"));
    }
    if (strut != Certainty.YES && cement != Certainty.NO) {
      possible.add("cement");
    }
    if (strut != Certainty.YES && cement == Certainty.OPEN) {
      missing.add(
          scene.missing(
              "fixation/screws/augmentation",
              "Which screws are in cement, how far from the zone, and is infection excluded?"));
    }
    if (strut != Certainty.YES && cement != Certainty.YES) {
      possible.add("nothing");
    }
    return Reading.words(
        possible, Kind.FACT, "a plate holds the bone", missing.toArray(MissingFact[]::new));
  }

  private static MissingFact implantsMissing(Scene scene) {
    return scene.missing("fixation", "Which implants were put in?");
  }
}
