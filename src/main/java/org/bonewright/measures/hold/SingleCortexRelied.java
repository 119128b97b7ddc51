package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/** Whether a plate relies on screws that hold in a single cortex. */
final class SingleCortexRelied implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "single-cortex-relied",
        "Screws in a single cortex hold the bone",
        Definition.yesOrNo(),
        "yes when a plate screw crosses fewer than two cortices and no nail holds the bone; beside a"
            + " nail there is no room for more",
        List.of(
            "operations/fixation/screws/cortices",
            "operations/fixation/screws/tipBeyondMm",
            "nail-used"),
        "bookkeeping; leaving out plates beside a nail is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("nail-used", "yes")) {
      return Reading.word("no", "a nail holds the bone");
    }
    List<Plate> plates = scene.construct().of(Plate.class);
    if (plates.isEmpty()) {
      return scene.certainly("plate-used", "no")
          ? Reading.word("no", "no plate in place")
          : Plates.noPlate(scene);
    }
    Certainty single = Certainty.NO;
    List<MissingFact> missing = new ArrayList<>();
    for (Plate plate : plates) {
      Certainty here = single(plate);
      single = single.or(here);
      if (here == Certainty.OPEN) {
        missing.add(asked(scene, plate));
      }
    }
    Set<String> possible = new TreeSet<>();
    if (single != Certainty.NO) {
      possible.add("yes");
    }
    if (single != Certainty.YES || scene.possibly("nail-used", "yes")) {
      possible.add("no");
    }
    missing.addAll(scene.read("nail-used").missing());
    return Reading.words(
        possible,
        Kind.FACT,
        single == Certainty.NO ? "every screw crosses both cortices" : "screws in one cortex",
        missing.toArray(MissingFact[]::new));
  }

  private static Certainty single(Plate plate) {
    if (plate.screws().isEmpty()) {
      return Certainty.OPEN;
    }
    Certainty any = Certainty.NO;
    for (ScrewRow row : plate.screws().get()) {
      if (!row.at().isEmpty()) {
        any =
            any.or(Certainty.of(ScrewCortices.of(row).max() < 2, ScrewCortices.of(row).min() < 2));
      }
    }
    return any;
  }

  static MissingFact asked(Scene scene, Plate plate) {
    return scene.missing(
        "fixation/" + plate.id() + "/screws/cortices",
        "Do the screws of " + plate.id() + " cross one cortex or both?");
  }
}
