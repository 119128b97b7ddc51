package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/**
 * Where a plate lies: by a measured level, or as read off a film by the holes either side of the
 * zone.
 */
public record Placement(
    @Meaning(
            "The two holes either side of the zone: the last one before it and the first one beyond it.")
        @Between(min = 1, max = 30)
        Optional<List<Integer>> zoneBetweenHoles,
    @Meaning("Level in mm of hole 1.") @Between(min = 0, max = 600)
        Optional<Quantity> firstHoleMm) {}
