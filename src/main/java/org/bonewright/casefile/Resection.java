package org.bonewright.casefile;

/** Bone taken out. */
public record Resection(
    @Meaning("Level in mm.") @Between(min = 0, max = 600) Quantity fromMm,
    @Meaning("Level in mm.") @Between(min = 0, max = 600) Quantity toMm) {}
