package org.bonewright.measures.compression;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/**
 * The screws of the longest plate in one main fragment, by kind. A row whose holes lie on both
 * sides of the zone stands in both fragments.
 *
 * @param conventional rows of conventional screws
 * @param locking rows of locking screws
 */
record FragmentScrews(List<ScrewRow> conventional, List<ScrewRow> locking) {

  /** Return whether both kinds hold this fragment. */
  boolean mixed() {
    return !conventional.isEmpty() && !locking.isEmpty();
  }

  /** Return the fragments near and far; nothing where a screw's side, or any screw, is unknown. */
  static Optional<List<FragmentScrews>> bothSides(Scene scene) {
    Optional<PlacedPlate> plate =
        scene.mainPlate().filter(placed -> placed.plate().screws().isPresent());
    boolean told =
        plate.map(p -> filled(p).noneMatch(hole -> p.side(hole) == HoleSide.UNSURE)).orElse(false);
    return told
        ? plate.map(p -> List.of(on(p, HoleSide.NEAR), on(p, HoleSide.FAR)))
        : Optional.empty();
  }

  private static FragmentScrews on(PlacedPlate plate, HoleSide side) {
    List<ScrewRow> rows =
        filled(plate)
            .filter(hole -> plate.side(hole) == side)
            .flatMap(hole -> plate.screwIn(hole).stream())
            .distinct()
            .toList();
    return new FragmentScrews(
        rows.stream().filter(row -> row.type() != ScrewRow.Type.LOCKING).toList(),
        rows.stream().filter(row -> row.type() == ScrewRow.Type.LOCKING).toList());
  }

  private static Stream<Integer> filled(PlacedPlate plate) {
    return plate.allHoles().filter(hole -> plate.screwIn(hole).isPresent()).boxed();
  }

  /** Return whether the plate certainly holds no screw of this kind, wherever its holes lie. */
  static boolean certainlyWithout(Scene scene, boolean locking) {
    return scene
        .mainPlate()
        .flatMap(placed -> placed.plate().screws())
        .map(
            rows ->
                rows.stream().noneMatch(row -> (row.type() == ScrewRow.Type.LOCKING) == locking))
        .orElse(false);
  }

  /** Return what the file must say for the fragment of every screw to be known. */
  static Reading unknown(Scene scene) {
    return scene
        .mainPlate()
        .map(placed -> placed.plate())
        .map(
            plate ->
                Reading.unknown(
                    plate.screws().isEmpty()
                        ? scene.missing(
                            "fixation/" + plate.id() + "/screws",
                            "Which holes of " + plate.id() + " hold which screw?")
                        : scene.missing(
                            "fixation/" + plate.id() + "/place",
                            "Which two holes of " + plate.id() + " lie either side of the zone?")))
        .orElseGet(() -> Plates.noPlate(scene));
  }

  /** Return the question for the order of insertion. */
  static MissingFact order(Scene scene) {
    String id = scene.mainPlate().map(placed -> placed.plate().id()).orElse("");
    return scene.missing(
        "fixation/" + id + "/screws/order", "In which order were the screws of " + id + " put in?");
  }
}
