package org.bonewright.casefile;

/** Motion of one joint. */
public record JointMotion(
    @Meaning("Which joint.") String joint,
    @Meaning("Motion in percent of the other side.") @Between(min = 0, max = 100)
        Quantity percent) {}
