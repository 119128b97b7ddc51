package org.bonewright.measures.reuse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * A screw of a plate that the subject puts in.
 *
 * @param plate its plate
 * @param row its row in the case
 * @param side the side of the zone that it lies on
 * @param bite what it finds in the bone
 */
record NewScrew(PlacedPlate plate, ScrewRow row, HoleSide side, Bite bite) {

  /** Return the plates that the subject puts in and leaves, the longest first. */
  static List<PlacedPlate> plates(Scene scene) {
    return scene.plates().stream().filter(placed -> isNew(scene, placed.plate())).toList();
  }

  private static boolean isNew(Scene scene, Plate plate) {
    return scene.before(plate).size() >= scene.subject().before().size();
  }

  /** Return the screws of these plates, as far as the file tells them. */
  static List<NewScrew> all(Scene scene) {
    return scene.once("new-screws", () -> find(scene));
  }

  private static List<NewScrew> find(Scene scene) {
    List<NewScrew> all = new ArrayList<>();
    for (PlacedPlate placed : plates(scene)) {
      for (ScrewRow row : placed.plate().screws().orElse(List.of())) {
        for (int hole : row.at()) {
          scene
              .bite(placed.plate(), hole)
              .ifPresent(bite -> all.add(new NewScrew(placed, row, placed.side(hole), bite)));
        }
      }
    }
    return List.copyOf(all);
  }

  /** Return why there is no new plate to judge: none is put in, or it is not told. */
  static Reading noPlate(Scene scene) {
    return scene.certainly("new-plate", "no")
        ? new Reading.None("no new plate")
        : new Reading.Unknown(scene.read("new-plate").missing());
  }

  /** Return the first new plate whose screws are not told. */
  static Optional<MissingFact> untold(Scene scene) {
    return plates(scene).stream()
        .filter(placed -> placed.plate().screws().isEmpty())
        .map(placed -> placed.plate().id())
        .map(
            id ->
                scene.missing(
                    "fixation/" + id + "/screws", "Which holes of " + id + " hold which screw?"))
        .findFirst();
  }

  /** Return whether every screw certainly lies on one side, or certainly over the zone. */
  static boolean sidesKnown(List<NewScrew> screws) {
    return screws.stream().noneMatch(screw -> screw.side() == HoleSide.UNSURE);
  }
}
