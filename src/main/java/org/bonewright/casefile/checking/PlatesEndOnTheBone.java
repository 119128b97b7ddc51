package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Placement;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.checking.Procedure.Scene;
import org.bonewright.casefile.reading.Problem.Severity;

/**
 * No plate reaches beyond either end of the bone, where it is placed. A level counts before the
 * holes either side of the zone, which leave the plate some play.
 */
final class PlatesEndOnTheBone implements Check {

  private static final String ALLOWED =
      "a place at which the first and the last hole are on the bone";

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      Scene scene = plate.by().sequence().scene();
      BoneReach bone = BoneReach.of(contents.file(), scene);
      Optional<Placement> place =
          plate.implant().place().filter(placed -> !isTooLong(plate.implant(), bone));
      place
          .flatMap(Placement::firstHoleMm)
          .ifPresent(first -> byLevel(first, plate, bone, objections));
      Optional<ZoneEdges> zone = ZoneEdges.of(contents.file(), scene);
      Optional<List<Integer>> holes =
          place
              .filter(placed -> placed.firstHoleMm().isEmpty())
              .flatMap(Placement::zoneBetweenHoles)
              .filter(pair -> pair.size() == 2);
      if (zone.isPresent() && holes.isPresent()) {
        byZone(holes.get(), zone.get(), plate, bone, objections);
      }
    }
  }

  /** A plate that fits nowhere is reported once, for its length. */
  private static boolean isTooLong(Plate plate, BoneReach bone) {
    return plate.lengthMm().flatMap(mm -> bone.shorterThan(mm.min())).isPresent()
        || PlateSpan.of(plate).flatMap(span -> bone.shorterThan(span.atLeast())).isPresent();
  }

  private static void byLevel(
      Quantity first, Fitted<Plate> plate, BoneReach bone, Objections objections) {
    Optional<PlateSpan> span = PlateSpan.of(plate.implant());
    if (span.isEmpty() || bone.beyondFarEnd(first.min()).isPresent()) {
      return;
    }
    double last = first.min() + span.get().atLeast();
    bone.beyondFarEnd(last)
        .ifPresent(
            severity ->
                objections.note(
                    span.get().isStated() ? severity : Severity.WARNING,
                    plate.at().field("place").field("firstHoleMm"),
                    "hole 1 at "
                        + Wording.mm(first)
                        + ", so the last hole at "
                        + Wording.mm(last)
                        + " or more, beyond the far end of "
                        + bone.inWords(),
                    ALLOWED));
  }

  private static void byZone(
      List<Integer> holes,
      ZoneEdges zone,
      Fitted<Plate> plate,
      BoneReach bone,
      Objections objections) {
    Optional<HoleSpacing> known = HoleSpacing.of(plate.implant());
    if (known.isEmpty()) {
      return;
    }
    HoleSpacing spacing = known.get();
    int beyond = plate.implant().holes().map(count -> count - holes.get(1)).orElse(0);
    double first = zone.beginsAtMost() - spacing.atLeast(holes.get(0) - 1);
    double last = zone.endsAtLeast() + spacing.atLeast(Math.max(0, beyond));
    At at = plate.at().field("place").field("zoneBetweenHoles");
    bone.beforeNearEnd(first)
        .ifPresent(
            severity ->
                objections.note(
                    spacing.stated() ? severity : Severity.WARNING,
                    at,
                    "hole 1 at "
                        + Wording.mm(first)
                        + " or less, before the near end of "
                        + bone.inWords(),
                    ALLOWED));
    bone.beyondFarEnd(last)
        .ifPresent(
            severity ->
                objections.note(
                    spacing.stated() ? severity : Severity.WARNING,
                    at,
                    "the last hole at "
                        + Wording.mm(last)
                        + " or more, beyond the far end of "
                        + bone.inWords(),
                    ALLOWED));
  }
}
