package org.bonewright.casefile.checking;

import org.bonewright.casefile.OtherImplant;

/** An implant from outside the history begins no farther along than it ends. */
final class OtherImplantsRunFromNearToFar implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    Located.each(
            contents.file().bone().otherImplants(), At.FILE.field("bone").field("otherImplants"))
        .forEach(implant -> look(implant, objections));
  }

  private static void look(Located<OtherImplant> implant, Objections objections) {
    OtherImplant value = implant.value();
    if (Certainly.below(value.toMm(), value.fromMm())) {
      objections.refuse(
          implant.at().field("toMm"),
          "an implant from " + Wording.mm(value.fromMm()) + " back to " + Wording.mm(value.toMm()),
          "an end at or beyond the beginning, " + Wording.mm(value.fromMm()));
    }
  }
}
