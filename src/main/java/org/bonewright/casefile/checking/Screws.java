package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;

/** Which holes of a plate hold a screw. */
final class Screws {

  private Screws() {}

  /** Return the holes that rows of screws name. */
  static Stream<Integer> holes(List<ScrewRow> rows) {
    return rows.stream().flatMap(row -> row.at().stream());
  }

  /** Return the rows of a plate, each with its place. */
  static Stream<Located<ScrewRow>> rows(Fitted<Plate> plate) {
    return Located.each(plate.implant().screws(), plate.at().field("screws"));
  }

  /** Return the hole in which an implant passes through this plate, if it is such a lag screw. */
  static Optional<Integer> throughPlate(Fitted<? extends Implant> fitted, Fitted<Plate> plate) {
    return Optional.of(fitted)
        .filter(f -> f.isA(LagScrew.class))
        .map(f -> f.as(LagScrew.class).implant())
        .filter(lag -> lag.throughPlate().equals(Optional.of(plate.implant().id())))
        .flatMap(LagScrew::hole);
  }
}
