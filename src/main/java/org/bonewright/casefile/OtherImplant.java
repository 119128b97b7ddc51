package org.bonewright.casefile;

/** An implant in the bone that is not part of this history. */
public record OtherImplant(
    @Meaning("What it is.") String what,
    @Meaning("Level in mm where it begins.") @Between(min = 0, max = 600) Quantity fromMm,
    @Meaning("Level in mm where it ends.") @Between(min = 0, max = 600) Quantity toMm) {}
