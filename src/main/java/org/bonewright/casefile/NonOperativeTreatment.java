package org.bonewright.casefile;

import java.util.Optional;

/** Treatment without an operation. */
public record NonOperativeTreatment(
    @Meaning("What.") Kind kind,
    @Meaning("First day.") @Between(min = 0, max = 36500) Quantity fromDay,
    @Meaning("Last day.") @Between(min = 0, max = 36500) Optional<Quantity> toDay) {

  /** Kinds of treatment. */
  public enum Kind {
    BRACE,
    CAST,
    TRACTION,
    ULTRASOUND,
    SHOCK_WAVES,
    DRUG,
    OBSERVATION
  }
}
