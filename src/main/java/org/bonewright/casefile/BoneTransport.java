package org.bonewright.casefile;

import java.util.Optional;

/** Transport of a piece of bone along a defect. */
public record BoneTransport(
    @Meaning("Days between the cut and the first move.") @Between(min = 0, max = 60)
        Optional<Quantity> latencyDays,
    @Meaning("Movement a day in mm.") @Between(min = 0, max = 5) Optional<Quantity> mmPerDay,
    @Meaning("Steps a day.") @Between(min = 1, max = 100) Optional<Quantity> stepsPerDay,
    @Meaning("Days of consolidation after the last move.") @Between(min = 0, max = 2000)
        Optional<Quantity> consolidationDays,
    @Meaning("Whether graft or compression is planned where the ends meet.")
        Optional<Answer> dockingTreated) {}
