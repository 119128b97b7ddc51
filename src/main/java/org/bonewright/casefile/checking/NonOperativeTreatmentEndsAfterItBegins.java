package org.bonewright.casefile.checking;

import org.bonewright.casefile.NonOperativeTreatment;

/** A treatment without an operation does not end before it begins. */
final class NonOperativeTreatmentEndsAfterItBegins implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    Located.each(contents.file().nonOperative(), At.FILE.field("nonOperative"))
        .forEach(treatment -> look(treatment, objections));
  }

  private static void look(Located<NonOperativeTreatment> treatment, Objections objections) {
    NonOperativeTreatment value = treatment.value();
    value
        .toDay()
        .filter(last -> Certainly.below(last, value.fromDay()))
        .ifPresent(
            last ->
                objections.refuse(
                    treatment.at().field("toDay"),
                    Wording.words(value.kind())
                        + " from "
                        + Wording.day(value.fromDay())
                        + " to "
                        + Wording.day(last),
                    "a last day that is not before the first"));
  }
}
