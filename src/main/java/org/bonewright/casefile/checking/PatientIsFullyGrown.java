package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Patient;

/** The patient has stopped growing: the principles are about adults. */
final class PatientIsFullyGrown implements Check {

  private static final int GROWN_AT = 16;
  private static final String ALLOWED =
      "a skeletally mature patient; growing bone is outside what the principles cover";

  @Override
  public void look(Contents contents, Objections objections) {
    Patient patient = contents.file().patient();
    At at = At.FILE.field("patient");
    Optional<Answer> mature = patient.skeletallyMature();
    if (mature.equals(Optional.of(Answer.NO))) {
      objections.warn(at.field("skeletallyMature"), "a patient who is still growing", ALLOWED);
    } else if (!mature.equals(Optional.of(Answer.YES))) {
      patient
          .ageYears()
          .filter(age -> age.max() < GROWN_AT)
          .ifPresent(
              age ->
                  objections.warn(
                      at.field("ageYears"),
                      "an age of "
                          + Wording.number(age)
                          + " years and no word that growth has ended",
                      ALLOWED));
    }
  }
}
