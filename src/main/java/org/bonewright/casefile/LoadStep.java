package org.bonewright.casefile;

/** A load limit for a time. */
public record LoadStep(
    @Meaning("Day after the operation until which it holds.") @Between(min = 0, max = 1000)
        Quantity untilDay,
    @Meaning("Limit in kg.") @Between(min = 0, max = 400) Quantity limitKg) {}
