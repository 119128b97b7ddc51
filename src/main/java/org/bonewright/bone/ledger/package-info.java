/**
 * The bone's memory: every track ever drilled, metal still inside, resections, and what a new screw
 * finds.
 *
 * <p>Enters: the operations in order, each with the zone as it was found. Leaves: the {@link
 * org.bonewright.bone.ledger.Ledger} as an operation found it, and for each new screw its {@link
 * org.bonewright.bone.ledger.Bite}: how much of its thread is left in either cortex once the old
 * tracks are cut out, and how close the next one lies. May use the bone's shape and the case.
 */
@NullMarked
package org.bonewright.bone.ledger;

import org.jspecify.annotations.NullMarked;
