package org.bonewright.casefile;

import java.util.Optional;

/**
 * How the two bones of the forearm fit each other at the end of an operation, compared with the
 * other side. Only for radius and ulna.
 */
public record ForearmFit(
    @Meaning("Height of the bow of the radius against the other side, in mm; sign does not matter.")
        @Between(min = -20, max = 20)
        Optional<Quantity> bowHeightDifferenceMm,
    @Meaning(
            "Place of the highest point of the bow against the other side, in percent of the length of the radius; sign does not matter.")
        @Between(min = -50, max = 50)
        Optional<Quantity> bowPlaceDifferencePercent,
    @Meaning("Ulnar variance against the other side, in mm; sign does not matter.")
        @Between(min = -50, max = 50)
        Optional<Quantity> ulnarVarianceDifferenceMm,
    @Meaning("Whether the joint between radius and ulna at the wrist sits well.")
        Optional<Answer> wristJointSits,
    @Meaning("Whether the head of the radius sits well.") Optional<Answer> radialHeadSits) {}
