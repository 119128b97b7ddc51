package org.bonewright.casefile.checking;

import org.bonewright.casefile.Plate;

/** A plate beneath the skin does not stand off the bone by more than a finger's breadth. */
final class PlatesLieNearTheBone implements Check {

  /** Our convention: even a locked plate over a bow of the bone keeps nearer, mm. */
  private static final double FARTHEST = 10;

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      plate
          .implant()
          .standOffMm()
          .filter(mm -> mm.min() > FARTHEST)
          .ifPresent(
              mm ->
                  objections.warn(
                      plate.at().field("standOffMm"),
                      "a plate " + Wording.mm(mm) + " off the bone",
                      "up to about " + Wording.mm(FARTHEST)));
    }
  }
}
