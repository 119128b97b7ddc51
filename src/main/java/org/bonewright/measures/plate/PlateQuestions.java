package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/** What a surgeon is asked when a plate is not described well enough. */
final class PlateQuestions {

  private PlateQuestions() {}

  static MissingFact screws(Scene scene, Plate plate) {
    return about(scene, plate, "screws", "Which holes of " + plate.id() + " hold which screw?");
  }

  static MissingFact place(Scene scene, Plate plate) {
    return about(
        scene,
        plate,
        "place",
        "Which two holes of "
            + plate.id()
            + " lie either side of the zone, and at which level is hole 1?");
  }

  static MissingFact holes(Scene scene, Plate plate) {
    return about(
        scene,
        plate,
        "holes",
        "How many holes has " + plate.id() + ", how far apart, and how long is it?");
  }

  static MissingFact family(Scene scene, Plate plate) {
    return about(scene, plate, "family", "What size and type of plate is " + plate.id() + "?");
  }

  static MissingFact surface(Scene scene, Plate plate) {
    return about(
        scene, plate, "surface", "On which surface of the bone does " + plate.id() + " lie?");
  }

  static MissingFact zone(Scene scene) {
    return scene.missingInCase(
        "injury/zone", "From which level to which is the bone broken or not united, in mm?");
  }

  static MissingFact width(Scene scene) {
    return scene.missingInCase(
        "bone/sections", "What is the outer diameter of the bone there, in mm?");
  }

  /** Return what would make the place of a plate over the zone exact. */
  static List<MissingFact> vague(Scene scene, PlacedPlate placed) {
    List<MissingFact> vague = new ArrayList<>();
    if (open(placed.distance(1))) {
      vague.add(place(scene, placed.plate()));
    }
    boolean untold = placed.plate().holes().isEmpty();
    if (untold || open(placed.length()) || open(placed.spacing())) {
      vague.add(holes(scene, placed.plate()));
    }
    if (open(scene.zone().length())) {
      vague.add(zone(scene));
    }
    return vague;
  }

  /** Return whether a dimension is a range, or not known at all. */
  static boolean open(Optional<Dimension> dimension) {
    return dimension.map(d -> d.min() < d.max()).orElse(true);
  }

  private static MissingFact about(Scene scene, Plate plate, String field, String question) {
    return scene.missing("fixation/" + plate.id() + "/" + field, question);
  }
}
