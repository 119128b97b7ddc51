package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Pin;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far the nearest plate screw or pin keeps from the zone. */
final class ScrewToLine implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "screw-to-line",
        "Nearest screw to the line",
        Definition.signedMillimetres(),
        "distance along the bone from the axis of the nearest plate screw or fixator pin to the edge"
            + " of the zone, below zero inside the zone; lag screws are left out",
        List.of(
            "operations/fixation/place",
            "operations/fixation/screws",
            "operations/fixation/pins",
            "injury/zone",
            "findings/zone"),
        "common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    List<PlacedPlate> plates = scene.plates();
    List<ExternalFixator> fixators = scene.construct().of(ExternalFixator.class);
    if (plates.isEmpty() && fixators.isEmpty()) {
      return Holders.none(scene);
    }
    Optional<Dimension> zone = scene.zone().length();
    if (zone.isEmpty()) {
      return Reading.unknown(PlateQuestions.zone(scene));
    }
    Survey survey = new Survey(scene, zone.get());
    plates.forEach(survey::addPlate);
    fixators.forEach(survey::addFixator);
    return survey.reading();
  }

  /** Gathers the distance of every screw and pin. */
  private static final class Survey {
    private final Scene scene;
    private final Dimension halfZone;
    private final List<Dimension> distances = new ArrayList<>();
    private final Set<MissingFact> untold = new LinkedHashSet<>();
    private final Set<MissingFact> vague = new LinkedHashSet<>();

    Survey(Scene scene, Dimension zone) {
      this.scene = scene;
      this.halfZone = new Dimension(zone.min() / 2, zone.max() / 2, zone.assumed(), "");
    }

    void addPlate(PlacedPlate placed) {
      if (placed.plate().screws().isEmpty()) {
        untold.add(PlateQuestions.screws(scene, placed.plate()));
        return;
      }
      vague.addAll(PlateQuestions.vague(scene, placed));
      placed
          .allHoles()
          .filter(hole -> placed.screwIn(hole).isPresent())
          .forEach(hole -> addHole(placed, hole));
    }

    private void addHole(PlacedPlate placed, int hole) {
      Optional<Dimension> distance = placed.distance(hole);
      if (distance.isEmpty()) {
        untold.add(PlateQuestions.place(scene, placed.plate()));
        return;
      }
      HoleSide side = placed.side(hole);
      boolean outside = side == HoleSide.NEAR || side == HoleSide.FAR;
      Dimension clear = distance.get().magnitude().minus(halfZone);
      distances.add(
          outside
              ? new Dimension(
                  Math.max(0, clear.min()), Math.max(0, clear.max()), clear.assumed(), "")
              : clear);
    }

    void addFixator(ExternalFixator fixator) {
      MissingFact pins =
          scene.missing(
              "fixation/" + fixator.id() + "/pins",
              "At which levels do the pins of " + fixator.id() + " stand?");
      if (fixator.pins().isEmpty()) {
        untold.add(pins);
        return;
      }
      if (fixator.pins().get().stream().anyMatch(pin -> !pin.atMm().isExact())) {
        vague.add(pins);
      }
      if (PlateQuestions.open(scene.zone().centre())) {
        vague.add(PlateQuestions.zone(scene));
      }
      for (Pin pin : fixator.pins().get()) {
        Dimension level = Dimension.stated(pin.atMm(), "");
        scene
            .zone()
            .centre()
            .ifPresentOrElse(
                centre -> distances.add(level.minus(centre).magnitude().minus(halfZone)),
                () -> untold.add(PlateQuestions.zone(scene)));
      }
    }

    Reading reading() {
      if (!untold.isEmpty()) {
        return new Reading.Unknown(List.copyOf(untold));
      }
      if (distances.isEmpty()) {
        return new Reading.None("no plate screw or pin in place");
      }
      double min = distances.stream().mapToDouble(Dimension::min).min().orElseThrow();
      double max = distances.stream().mapToDouble(Dimension::max).min().orElseThrow();
      if (PlateQuestions.open(Optional.of(halfZone))) {
        vague.add(PlateQuestions.zone(scene));
      }
      return new Reading.Amount(
          min,
          max,
          distances.stream().anyMatch(Dimension::assumed) ? Kind.ASSUMED : Kind.FACT,
          distances.size() + " screws or pins, the nearest one counts",
          min == max ? List.of() : List.copyOf(vague));
    }
  }
}
