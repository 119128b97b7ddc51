package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** The patient as a host for bone healing. */
public record Host(
    @Meaning("Smoking.") Optional<Smoking> smoking,
    @Meaning("Day on which smoking stopped.") @Between(min = 0, max = 36500)
        Optional<Quantity> smokingStoppedDay,
    @Meaning("Diabetes.") Optional<Answer> diabetes,
    @Meaning("Long-term blood sugar (HbA1c), in percent.") @Between(min = 3, max = 20)
        Optional<Quantity> hba1cPercent,
    @Meaning("25-OH vitamin D in ng/mL.") @Between(min = 0, max = 200)
        Optional<Quantity> vitaminDNgMl,
    @Meaning("Albumin in g/L.") @Between(min = 5, max = 70) Optional<Quantity> albuminGL,
    @Meaning("Calcium in mmol/L.") @Between(min = 0.5, max = 5) Optional<Quantity> calciumMmolL,
    @Meaning("Phosphate in mmol/L.") @Between(min = 0.1, max = 5) Optional<Quantity> phosphateMmolL,
    @Meaning("Parathyroid hormone in pg/mL.") @Between(min = 0, max = 3000)
        Optional<Quantity> pthPgMl,
    @Meaning("Thyroid stimulating hormone in mU/L.") @Between(min = 0, max = 200)
        Optional<Quantity> tshMuL,
    @Meaning("Drugs that matter for bone; an empty list means none.") Optional<List<Drug>> drugs,
    @Meaning("Class of anaesthetic risk (ASA).") @Between(min = 1, max = 5)
        Optional<Quantity> asa) {

  /** Smoking. */
  public enum Smoking {
    NEVER,
    STOPPED,
    CURRENT,
    UNKNOWN
  }

  /** Drugs that matter for bone. */
  public enum Drug {
    NSAID,
    STEROID,
    BISPHOSPHONATE,
    DENOSUMAB,
    ANTICOAGULANT,
    IMMUNOSUPPRESSANT
  }
}
