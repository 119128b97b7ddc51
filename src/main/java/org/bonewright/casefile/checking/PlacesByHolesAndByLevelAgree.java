package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Placement;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.casefile.reading.Problem.Severity;

/**
 * A plate placed by the holes either side of the zone and by a level has these holes either side.
 *
 * <p>A hole inside the zone is a warning; so is one on its wrong side when the spacing comes from a
 * table; with a stated spacing that is certain. Where bone was cut out or the limb shortened, the
 * zone has moved against the levels and nothing can be said.
 */
final class PlacesByHolesAndByLevelAgree implements Check {

  /** Two readings of one film differ by this much, in mm. */
  private static final double READING = 5;

  private static final String ALLOWED =
      "a level of hole 1 that agrees with zoneBetweenHoles; one of the two is enough";

  /** A plate placed both ways. */
  private record Both(
      At at, List<Integer> holes, Quantity first, HoleSpacing spacing, ZoneEdges zone) {

    static Optional<Both> of(Fitted<Plate> plate, ZoneEdges zone) {
      Optional<Placement> place = plate.implant().place();
      Optional<List<Integer>> holes =
          place.flatMap(Placement::zoneBetweenHoles).filter(pair -> pair.size() == 2);
      Optional<Quantity> first = place.flatMap(Placement::firstHoleMm);
      Optional<HoleSpacing> spacing = HoleSpacing.of(plate.implant());
      return holes.isPresent() && first.isPresent() && spacing.isPresent()
          ? Optional.of(
              new Both(
                  plate.at().field("place").field("firstHoleMm"),
                  holes.get(),
                  first.get(),
                  spacing.get(),
                  zone))
          : Optional.empty();
    }

    double nearHoleAtLeast() {
      return first.min() + spacing.atLeast(holes.get(0) - 1);
    }

    double farHoleAtMost() {
      return first.max() + spacing.atMost(holes.get(1) - 1);
    }

    Severity severity(boolean acrossTheZone) {
      return acrossTheZone && spacing.stated() ? Severity.ERROR : Severity.WARNING;
    }
  }

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      ZoneEdges.of(contents.file(), plate.by().sequence().scene())
          .flatMap(zone -> Both.of(plate, zone))
          .filter(both -> zoneStayed(plate.by(), contents))
          .ifPresent(
              both -> {
                nearHole(both, objections);
                farHole(both, objections);
              });
    }
  }

  private static void nearHole(Both both, Objections objections) {
    double level = both.nearHoleAtLeast();
    if (level > both.zone().beginsAtMost() + READING) {
      objections.note(
          both.severity(level > both.zone().endsAtMost() + READING),
          both.at(),
          "hole "
              + both.holes().get(0)
              + " at "
              + Wording.mm(level)
              + " or more by the level of hole 1, and said to lie before the "
              + both.zone().inWords(),
          ALLOWED);
    }
  }

  private static void farHole(Both both, Objections objections) {
    double level = both.farHoleAtMost();
    if (level < both.zone().endsAtLeast() - READING) {
      objections.note(
          both.severity(level < both.zone().beginsAtLeast() - READING),
          both.at(),
          "hole "
              + both.holes().get(1)
              + " at "
              + Wording.mm(level)
              + " or less by the level of hole 1, and said to lie beyond the "
              + both.zone().inWords(),
          ALLOWED);
    }
  }

  private static boolean zoneStayed(Procedure procedure, Contents contents) {
    return contents.procedures().stream()
        .filter(procedure::mayMeet)
        .filter(other -> !procedure.comesBefore(other))
        .map(Procedure::operation)
        .noneMatch(PlacesByHolesAndByLevelAgree::movesTheZone);
  }

  private static boolean movesTheZone(Operation operation) {
    boolean cut = operation.resection().filter(pieces -> !pieces.isEmpty()).isPresent();
    return cut
        || operation
            .reduction()
            .flatMap(Reduction::shorteningMm)
            .filter(mm -> mm.max() > READING)
            .isPresent();
  }
}
