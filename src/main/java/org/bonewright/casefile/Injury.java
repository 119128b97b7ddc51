package org.bonewright.casefile;

import java.util.Optional;

/** The injury that began the history. */
public record Injury(
    @Meaning("Pattern of the fracture.") Optional<Pattern> pattern,
    @Meaning("Angle in degrees between the line and a plane across the bone.")
        @Between(min = 0, max = 90)
        Optional<Quantity> obliquityDeg,
    @Meaning("Direction towards which the line runs down.") Optional<Direction> lineDirection,
    @Meaning("The broken zone.") Optional<Zone> zone,
    @Meaning("Open injury, graded after Gustilo and Anderson.") Optional<OpenGrade> openGrade,
    @Meaning("Energy of the injury.") Optional<Energy> energy,
    @Meaning("Injury of a main vessel.") Optional<Examination> vessel,
    @Meaning("Nerve function after the injury.") Optional<NerveState> nerve,
    @Meaning("Compartment syndrome.") Optional<Examination> compartmentSyndrome,
    @Meaning("Code of the fracture classification; shown, never used by a rule.")
        Optional<String> aoOta) {

  /** Pattern of a shaft fracture. */
  public enum Pattern {
    /** Simple, below 30 degrees. */
    TRANSVERSE,
    /** Simple, 30 degrees or more. */
    OBLIQUE,
    SPIRAL,
    WEDGE,
    MULTIFRAGMENTARY,
    /** Two separate lines with an intact piece between. */
    SEGMENTAL,
    /** A piece of the shaft is missing. */
    SEGMENTAL_DEFECT
  }

  /** Grade of an open injury. */
  public enum OpenGrade {
    NONE,
    I,
    II,
    IIIA,
    IIIB,
    IIIC
  }

  /** Energy of the injury. */
  public enum Energy {
    STANDING_HEIGHT,
    LOW,
    HIGH
  }
}
