package org.bonewright.bone.ledger;

import org.bonewright.casefile.Direction;

/**
 * A stretch of one surface where a row of screws finds fresh bone wherever in it they are put.
 *
 * @param surface the surface that they enter
 * @param from level in mm of the first place for the middle of a screw
 * @param to level in mm of the last one
 */
public record Corridor(Direction surface, double from, double to) {}
