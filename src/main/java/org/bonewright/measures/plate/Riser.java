package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.OtherImplant;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * Metal in the same bone whose end raises stress there.
 *
 * @param what it is, in words
 * @param from level of its near end in mm
 * @param to level of its far end in mm
 */
record Riser(String what, Dimension from, Dimension to) {

  /** A nail is sunk this far below the end of the bone at most, in mm; from memory. */
  private static final double SUNK = 30;

  /** Return the other implants, nails and plates; empty where a nail or plate cannot be placed. */
  static Optional<List<Riser>> of(Scene scene, List<PlacedPlate> otherPlates) {
    List<Riser> risers = new ArrayList<>();
    for (OtherImplant other : scene.subject().caseFile().bone().otherImplants()) {
      risers.add(
          new Riser(
              other.what(),
              Dimension.stated(other.fromMm(), ""),
              Dimension.stated(other.toMm(), "")));
    }
    for (Nail nail : scene.construct().of(Nail.class)) {
      Optional<Riser> placed = nail(scene, nail);
      if (placed.isEmpty()) {
        return Optional.empty();
      }
      risers.add(placed.get());
    }
    for (PlacedPlate plate : otherPlates) {
      Optional<PlateEnds> ends = PlateEnds.levels(plate);
      if (ends.isEmpty()) {
        return Optional.empty();
      }
      risers.add(new Riser(plate.plate().id(), ends.get().near(), ends.get().far()));
    }
    return Optional.of(risers);
  }

  private static Optional<Riser> nail(Scene scene, Nail nail) {
    if (nail.entry().isEmpty() || nail.lengthMm().isEmpty()) {
      return Optional.empty();
    }
    Dimension sunk = Dimension.assumed(0, SUNK, "nail sunk 0 to 30 mm");
    Dimension length = Dimension.stated(nail.lengthMm().get(), "");
    if (nail.entry().get() == Nail.Entry.ANTEGRADE) {
      Dimension from = Fragments.nearEnd(scene).plus(sunk);
      return Optional.of(new Riser(nail.id(), from, from.plus(length)));
    }
    Dimension to = Fragments.farEnd(scene).minus(sunk);
    return Optional.of(new Riser(nail.id(), to.minus(length), to));
  }

  /** Return what is asked where a nail or plate cannot be placed, or is not told of. */
  static List<MissingFact> missing(Scene scene, List<PlacedPlate> plates) {
    List<MissingFact> missing = new ArrayList<>();
    if (!scene.construct().known()) {
      missing.add(scene.missing("fixation", "Which implants are in the bone?"));
    }
    for (Nail nail : scene.construct().of(Nail.class)) {
      missing.add(
          scene.missing(
              "fixation/" + nail.id() + "/lengthMm",
              "How long is " + nail.id() + ", and from which end was it put in?"));
    }
    plates.forEach(plate -> missing.addAll(PlateQuestions.vague(scene, plate)));
    if (scene.subject().caseFile().bone().otherImplants().stream()
        .anyMatch(other -> !other.fromMm().isExact() || !other.toMm().isExact())) {
      missing.add(
          scene.missingInCase(
              "bone/otherImplants", "From which level to which does the other implant lie?"));
    }
    missing.add(PlateQuestions.width(scene));
    return missing.stream().distinct().toList();
  }
}
