package org.bonewright.casefile.checking;

import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.Placement;
import org.bonewright.casefile.Plate;

/** Screws, plugs and the zone are at holes that the plate has, and a row of screws names them. */
final class HolesAreOnThePlate implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      Stream.of(screwed(plate), plugged(plate), besideTheZone(plate))
          .flatMap(holes -> holes)
          .filter(hole -> PlateHoles.certainlyLacks(plate.implant(), hole.value()))
          .forEach(hole -> refuse(hole, plate.implant(), objections));
      Screws.rows(plate)
          .filter(row -> row.value().at().isEmpty())
          .forEach(
              row ->
                  objections.refuse(
                      row.at().field("at"),
                      "a row of screws without a hole",
                      "the numbers of the holes; leave the screws out where they are not known"));
    }
  }

  private static void refuse(Located<Integer> hole, Plate plate, Objections objections) {
    objections.refuse(
        hole.at(),
        "hole " + hole.value() + " of a plate with " + PlateHoles.inWords(plate),
        "holes 1 to " + plate.holes().orElseThrow() + ", counted from the near end");
  }

  private static Stream<Located<Integer>> screwed(Fitted<Plate> plate) {
    return Screws.rows(plate).flatMap(row -> Located.each(row.value().at(), row.at().field("at")));
  }

  private static Stream<Located<Integer>> plugged(Fitted<Plate> plate) {
    return Located.each(plate.implant().plugged(), plate.at().field("plugged"));
  }

  private static Stream<Located<Integer>> besideTheZone(Fitted<Plate> plate) {
    return Located.each(
        Optional.of(plate.implant()).flatMap(Plate::place).flatMap(Placement::zoneBetweenHoles),
        plate.at().field("place").field("zoneBetweenHoles"));
  }
}
