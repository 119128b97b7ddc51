package org.bonewright.casefile;

import java.util.Optional;

/** A pin or wire of a fixator. */
public record Pin(
    @Meaning("Level in mm.") @Between(min = 0, max = 600) Quantity atMm,
    @Meaning("Direction in which it was put in.") Optional<Direction> direction,
    @Meaning("Diameter in mm.") @Between(min = 1, max = 8) Optional<Quantity> diameterMm,
    @Meaning("What became of it.") Optional<ScrewRow.State> state) {}
