package org.bonewright.casefile.checking;

import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.reading.Problem.Severity;

/** No plate is longer than the bone that carries it. */
final class PlatesAreNoLongerThanTheBone implements Check {

  private static final String ALLOWED = "a plate no longer than the bone";

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      BoneReach bone = BoneReach.of(contents.file(), plate.by().sequence().scene());
      plate
          .implant()
          .lengthMm()
          .ifPresentOrElse(
              length -> byLength(length, plate, bone, objections),
              () -> byHoles(plate, bone, objections));
    }
  }

  private static void byLength(
      Quantity length, Fitted<Plate> plate, BoneReach bone, Objections objections) {
    bone.shorterThan(length.min())
        .ifPresent(
            severity ->
                objections.note(
                    severity,
                    plate.at().field("lengthMm"),
                    "a plate of " + Wording.mm(length) + " on " + bone.inWords(),
                    ALLOWED));
  }

  private static void byHoles(Fitted<Plate> plate, BoneReach bone, Objections objections) {
    PlateSpan.of(plate.implant())
        .ifPresent(
            span ->
                bone.shorterThan(span.atLeast())
                    .map(severity -> span.isStated() ? severity : Severity.WARNING)
                    .ifPresent(
                        severity ->
                            objections.note(
                                severity,
                                plate.at().field("holes"),
                                Wording.count(plate.implant().holes().orElse(0), "hole")
                                    + ", "
                                    + Wording.mm(span.atLeast())
                                    + " at least from first to last, on "
                                    + bone.inWords(),
                                ALLOWED)));
  }
}
