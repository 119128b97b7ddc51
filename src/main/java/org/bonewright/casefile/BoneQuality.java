package org.bonewright.casefile;

import java.util.Optional;

/** One measurement of bone quality. */
public record BoneQuality(
    @Meaning("How it was measured.") Method method,
    @Meaning("The value in the unit of the method.") @Between(min = -1500, max = 3000)
        Quantity value,
    @Meaning("Day of the measurement.") @Between(min = 0, max = 36500) Optional<Quantity> day) {

  /** How bone quality was measured. */
  public enum Method {
    /** Outer over inner cortical width above the deltoid tuberosity; no unit. */
    DELTOID_TUBEROSITY_INDEX,
    /** Mean of medial and lateral cortex at two levels of the humerus, mm. */
    COMBINED_CORTICAL_THICKNESS,
    /** Cortex at the place of the screws, mm. */
    CORTICAL_THICKNESS,
    /** Cortical share of the femoral width; no unit. */
    FEMORAL_CORTICAL_INDEX,
    /** Standard deviations from the young mean. */
    DXA_T_SCORE,
    /** Hounsfield units of the cortex. */
    CT_HOUNSFIELD
  }
}
