package org.bonewright.casefile;

import java.util.Optional;

/**
 * The reduction at the end of an operation. Negative angles stand for varus, recurvatum and inward
 * rotation.
 */
public record Reduction(
    @Meaning("Widest gap under the plate, or on the first view, in mm.")
        @Between(min = 0, max = 200)
        Optional<Quantity> gapNearMm,
    @Meaning("Widest gap on the far cortex, or on the second view, in mm.")
        @Between(min = 0, max = 200)
        Optional<Quantity> gapFarMm,
    @Meaning("Percent of the circumference in contact.") @Between(min = 0, max = 100)
        Optional<Quantity> contactPercent,
    @Meaning("Percent of the circumference missing opposite the plate.")
        @Between(min = 0, max = 100)
        Optional<Quantity> farDefectPercent,
    @Meaning("Step between the ends in mm.") @Between(min = 0, max = 60)
        Optional<Quantity> translationMm,
    @Meaning("Deviation in the coronal plane in degrees.") @Between(min = -90, max = 90)
        Optional<Quantity> coronalDeg,
    @Meaning("Deviation in the sagittal plane in degrees.") @Between(min = -90, max = 90)
        Optional<Quantity> sagittalDeg,
    @Meaning("Rotation in degrees.") @Between(min = -180, max = 180) Optional<Quantity> rotationDeg,
    @Meaning("Shortening against the other side in mm, old and new together.")
        @Between(min = -50, max = 200)
        Optional<Quantity> shorteningMm,
    @Meaning("How radius and ulna fit each other, compared with the other side.")
        Optional<ForearmFit> forearm) {

  /** Return the wider of the gaps on the two sides, where both are stated. */
  public Optional<Quantity> widestGap() {
    return gapNearMm.flatMap(
        near ->
            gapFarMm.map(
                far ->
                    new Quantity(
                        Math.max(near.min(), far.min()), Math.max(near.max(), far.max()))));
  }
}
