package org.bonewright.mechanics.answer;

import java.util.OptionalDouble;

/**
 * How the fracture moves, at the outer edge of the bone.
 *
 * @param near opening at the cortex under the first plate in mm
 * @param far opening at the cortex opposite to it in mm
 * @param min smallest opening round the ring in mm
 * @param max largest opening round the ring in mm
 * @param shear largest movement in the plane of the fracture in mm, turning included
 * @param nearStrain opening at the near cortex in percent of the gap; absent below a gap of 0.1 mm
 * @param farStrain opening at the far cortex in percent of the gap; absent below a gap of 0.1 mm
 */
public record GapMovement(
    double near,
    double far,
    double min,
    double max,
    double shear,
    OptionalDouble nearStrain,
    OptionalDouble farStrain) {}
