package org.bonewright.casefile.checking;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Removal;

/** Single screws are taken out of a plate, from holes that it has and that held a screw. */
final class RemovedHolesHeldAScrew implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      Located.each(procedure.operation().removed(), procedure.at().field("removed"))
          .filter(removal -> !removal.value().holes().isEmpty())
          .forEach(
              removal ->
                  contents
                      .removable(removal.value().of(), procedure)
                      .ifPresent(implant -> look(removal, implant, contents, objections)));
    }
  }

  private static void look(
      Located<Removal> removal, Fitted<Implant> implant, Contents contents, Objections objections) {
    At at = removal.at().field("holes");
    if (!implant.isA(Plate.class)) {
      objections.refuse(
          at,
          "holes of " + implant.name() + ", which is no plate",
          "holes of a plate only; an empty list when the whole implant comes out");
      return;
    }
    Fitted<Plate> plate = implant.as(Plate.class);
    Optional<Set<Integer>> filled = everFilled(plate, contents);
    Located.each(removal.value().holes(), at)
        .forEach(hole -> look(hole, plate, filled, objections));
  }

  private static void look(
      Located<Integer> hole,
      Fitted<Plate> plate,
      Optional<Set<Integer>> filled,
      Objections objections) {
    if (PlateHoles.certainlyLacks(plate.implant(), hole.value())) {
      objections.refuse(
          hole.at(),
          "hole " + hole.value() + " of " + PlateHoles.inWords(List.of(plate)),
          "a hole that the plate has");
    } else if (filled.isPresent() && !filled.get().contains(hole.value())) {
      objections.refuse(
          hole.at(),
          "the screw of hole " + hole.value() + " of " + plate.name() + ", which never held one",
          filled.get().isEmpty() ? "no hole of this plate" : Wording.holes(filled.get()));
    }
  }

  /** Return the holes that ever held a screw; absent when the plate's screws are not known. */
  private static Optional<Set<Integer>> everFilled(Fitted<Plate> plate, Contents contents) {
    return plate
        .implant()
        .screws()
        .map(
            rows -> {
              Set<Integer> holes = new HashSet<>(Screws.holes(rows).toList());
              contents.implants().stream()
                  .flatMap(fitted -> Screws.throughPlate(fitted, plate).stream())
                  .forEach(holes::add);
              return holes;
            });
  }
}
