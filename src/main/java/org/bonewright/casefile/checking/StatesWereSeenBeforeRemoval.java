package org.bonewright.casefile.checking;

import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Removal;
import org.bonewright.casefile.ScrewRow;

/** A screw or bolt that was taken out is not seen loose or broken in the bone later. */
final class StatesWereSeenBeforeRemoval implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.done()) {
      Optional<Quantity> day = procedure.operation().day();
      if (day.isPresent()) {
        procedure.operation().removed().stream()
            .flatMap(removals -> removals.stream())
            .flatMap(removal -> seen(removal, procedure, contents))
            .filter(seen -> Certainly.below(day.get(), seen.value()))
            .forEach(
                seen ->
                    objections.refuse(
                        seen.at(),
                        "metal seen on "
                            + Wording.day(seen.value())
                            + " and taken out on "
                            + Wording.day(day.get())
                            + " by "
                            + procedure.operation().id(),
                        "a day on which it was in the bone"));
      }
    }
  }

  private static Stream<Located<Quantity>> seen(
      Removal removal, Procedure procedure, Contents contents) {
    return contents.removable(removal.of(), procedure).stream()
        .flatMap(
            implant ->
                removal.isWhole() ? StateDays.of(implant) : ofRowsTakenOut(removal, implant));
  }

  /** A row has one day for all its screws: it counts when every one of them was taken out. */
  private static Stream<Located<Quantity>> ofRowsTakenOut(
      Removal removal, Fitted<Implant> implant) {
    return Stream.of(implant)
        .filter(fitted -> fitted.isA(Plate.class))
        .flatMap(fitted -> Screws.rows(fitted.as(Plate.class)))
        .filter(row -> isTakenOut(row.value(), removal))
        .flatMap(StateDays::ofRow);
  }

  private static boolean isTakenOut(ScrewRow row, Removal removal) {
    return !row.at().isEmpty() && removal.holes().containsAll(row.at());
  }
}
