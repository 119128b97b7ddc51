package org.bonewright.measures.load;

import java.util.Optional;
import org.bonewright.bone.Dimension;

/**
 * What the bone may bear at the fracture during one activity, under the limit that is in force.
 * Each range holds for itself: any force may come with any bending.
 *
 * @param activity what is done
 * @param pressN force along the bone that presses it together, in N, zero at least
 * @param bendingNm bending moment in N·m, zero at least
 * @param torsionNm torsion in N·m, zero at least, whichever way round
 * @param tensionDeg the direction around the bone of the side that bending puts under tension, in
 *     degrees as in a case file: anterior 0, lateral 90, posterior 180, medial 270; empty for any
 * @param tensionSpreadDeg how far off that direction it may be, either way; 0 where it may be any
 * @param source where the numbers come from
 * @param basis how weight and aftercare made these numbers of them, in words
 */
public record LoadRange(
    String activity,
    Dimension pressN,
    Dimension bendingNm,
    Dimension torsionNm,
    Optional<Double> tensionDeg,
    double tensionSpreadDeg,
    String source,
    String basis) {}
