package org.bonewright.casefile;

import java.util.Optional;

/** The patient: what matters for healing and load, nothing that identifies. */
public record Patient(
    @Meaning("Age in years at the time of the file.") @Between(min = 0, max = 120)
        Optional<Quantity> ageYears,
    @Meaning("Sex, for table values of bone size.") Optional<Sex> sex,
    @Meaning("Height in cm.") @Between(min = 40, max = 250) Optional<Quantity> heightCm,
    @Meaning("Weight in kg.") @Between(min = 2, max = 400) Optional<Quantity> weightKg,
    @Meaning("What the limb must do in daily life.") Optional<Demand> demand,
    @Meaning("The dominant hand.") Optional<Side> dominantSide,
    @Meaning("Whether growth has ended.") Optional<Answer> skeletallyMature,
    @Meaning("Whether the patient is pregnant.") Optional<Answer> pregnant,
    @Meaning("Proven allergy to an implant material.") Optional<Examination> implantAllergy) {

  /** Sex as used by tables of bone size. */
  public enum Sex {
    FEMALE,
    MALE,
    OTHER
  }

  /** What the limb must do. */
  public enum Demand {
    LOW,
    SEDENTARY_WORK,
    MANUAL_WORK,
    SPORT
  }
}
