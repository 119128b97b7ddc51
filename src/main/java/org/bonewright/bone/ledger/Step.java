package org.bonewright.bone.ledger;

import java.util.Optional;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.Operation;

/**
 * One operation of the history, with the zone as it was found when it began.
 *
 * @param operation the operation, done or planned
 * @param stated the zone as described before it, in levels as read then; empty where nobody has
 *     described it since the operation before, which then tells what it left
 */
public record Step(Operation operation, Optional<FractureZone> stated) {}
