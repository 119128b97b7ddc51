package org.bonewright.casefile;

import java.util.Optional;

/**
 * How far the bone stands off on one day. Negative angles stand for varus, recurvatum and inward
 * rotation.
 */
public record Deformity(
    @Meaning("Deviation in the coronal plane in degrees.") @Between(min = -90, max = 90)
        Optional<Quantity> coronalDeg,
    @Meaning("Deviation in the sagittal plane in degrees.") @Between(min = -90, max = 90)
        Optional<Quantity> sagittalDeg,
    @Meaning("Rotation in degrees.") @Between(min = -180, max = 180)
        Optional<Quantity> rotationDeg) {}
