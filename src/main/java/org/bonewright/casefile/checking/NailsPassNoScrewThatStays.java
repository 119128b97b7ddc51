package org.bonewright.casefile.checking;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;

/**
 * A nail goes in where no screw of an earlier plate still crosses the canal. It may be that the
 * screws reach one cortex only, or lie beyond the nail, and the file does not say so: a warning.
 */
final class NailsPassNoScrewThatStays implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Nail> nail : contents.implants(Nail.class)) {
      MetalInTheBone.after(nail.by(), contents).stream()
          .flatMap(metal -> metal.plates().stream().map(plate -> blocking(nail, plate, metal)))
          .flatMap(Optional::stream)
          .forEach(
              found ->
                  objections.warn(
                      nail.at(),
                      found,
                      "the screws taken out (removed), or said to cross one cortex"));
    }
  }

  private static Optional<String> blocking(
      Fitted<Nail> nail, Fitted<Plate> plate, MetalInTheBone metal) {
    if (!plate.by().comesBefore(nail.by()) || beside(plate) != beside(nail)) {
      return Optional.empty();
    }
    Set<Integer> filled = metal.filled(plate).orElse(Set.of());
    long across =
        plate.implant().screws().stream()
            .flatMap(rows -> rows.stream())
            .filter(NailsPassNoScrewThatStays::crossesTheCanal)
            .flatMap(row -> row.at().stream())
            .filter(filled::contains)
            .filter(hole -> !clearOfTheNail(nail.implant(), plate.implant(), hole))
            .count();
    return across == 0
        ? Optional.empty()
        : Optional.of(
            "a nail past "
                + Wording.count((int) across, "screw")
                + " of "
                + plate.name()
                + " that stay in and cross the canal");
  }

  private static boolean beside(Fitted<?> fitted) {
    return fitted.by().sequence().scene() == Procedure.Scene.COMPANION;
  }

  private static boolean crossesTheCanal(ScrewRow row) {
    return row.cortices().map(cortices -> cortices.max() > 1).orElse(true);
  }

  /** An antegrade nail of known length ends before a hole that lies farther down the bone. */
  private static boolean clearOfTheNail(Nail nail, Plate plate, int hole) {
    return nail.entry().filter(entry -> entry == Nail.Entry.ANTEGRADE).isPresent()
        && Stream.of(nail.lengthMm())
            .flatMap(Optional::stream)
            .anyMatch(
                length ->
                    level(plate, hole).filter(level -> level > length.max() + ENTRY).isPresent());
  }

  /** The nail may start this far below the landmark, in mm. */
  private static final double ENTRY = 30;

  private static Optional<Double> level(Plate plate, int hole) {
    return plate
        .place()
        .flatMap(place -> place.firstHoleMm())
        .flatMap(
            first ->
                plate
                    .spacingMm()
                    .map(spacing -> spacing.min())
                    .or(() -> plate.family().map(Plate.Family::spacingMm))
                    .map(spacing -> first.min() + (hole - 1) * spacing));
  }
}
