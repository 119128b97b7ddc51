package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Pin;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many plate screws and pins stand outside the zone on the side that has fewer. */
final class ScrewsOutsideZone implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "screws-outside-zone",
        "Screws outside the zone, weaker side",
        Definition.count(1),
        "plate screws and fixator pins on each side of the zone, those inside it left out; the"
            + " smaller number counts",
        List.of(
            "operations/fixation/place",
            "operations/fixation/screws",
            "operations/fixation/pins",
            "injury/zone",
            "findings/zone"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<PlacedPlate> plates = scene.plates();
    List<ExternalFixator> fixators = scene.construct().of(ExternalFixator.class);
    if (plates.isEmpty() && fixators.isEmpty()) {
      return Holders.none(scene);
    }
    List<MissingFact> missing = new ArrayList<>();
    int near = 0;
    int far = 0;
    for (PlacedPlate placed : plates) {
      Optional<SideScrews> sides = SideScrews.of(placed);
      near += sides.map(s -> s.near().size()).orElse(0);
      far += sides.map(s -> s.far().size()).orElse(0);
      if (sides.isEmpty()) {
        missing.add(
            placed.plate().screws().isEmpty()
                ? PlateQuestions.screws(scene, placed.plate())
                : PlateQuestions.place(scene, placed.plate()));
      }
    }
    for (ExternalFixator fixator : fixators) {
      Optional<int[]> sides = pins(scene, fixator);
      near += sides.map(s -> s[0]).orElse(0);
      far += sides.map(s -> s[1]).orElse(0);
      if (sides.isEmpty()) {
        missing.add(
            scene.missing(
                "fixation/" + fixator.id() + "/pins",
                "At which levels do the pins of "
                    + fixator.id()
                    + " stand, and where is the zone?"));
      }
    }
    return missing.isEmpty()
        ? Reading.number(Math.min(near, far), "near " + near + ", far " + far)
        : new Reading.Unknown(missing);
  }

  /**
   * Return the pins before and beyond the zone, where each certainly is before, in or beyond it.
   */
  private static Optional<int[]> pins(Scene scene, ExternalFixator fixator) {
    Optional<Dimension> centre = scene.zone().centre();
    Optional<Dimension> length = scene.zone().length();
    if (fixator.pins().isEmpty() || centre.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    int[] sides = new int[2];
    for (Pin pin : fixator.pins().get()) {
      Dimension from = Dimension.stated(pin.atMm(), "").minus(centre.get());
      double inner = length.get().min() / 2;
      double outer = length.get().max() / 2;
      if (from.max() < -outer) {
        sides[0]++;
      } else if (from.min() > outer) {
        sides[1]++;
      } else if (from.min() < -inner || from.max() > inner) {
        return Optional.empty();
      }
    }
    return Optional.of(sides);
  }
}
