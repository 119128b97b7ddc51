/**
 * Forces: how stiff a construct is, how the fracture moves, what plate and screws carry.
 *
 * <p>Enters: a construct in numbers. Leaves: movements, forces and stresses with the limits of what
 * such a model can say. Units are N, mm, MPa and radians throughout. It knows nothing of verdicts.
 *
 * <p>Axes: z runs along the bone from proximal to distal and is 0 at the centre of the fracture; x
 * points from the axis of the bone towards the first plate; y completes a right-handed frame.
 * Tension is positive. A positive moment about y compresses the side of the plate and opens the far
 * cortex.
 */
@NullMarked
package org.bonewright.mechanics;

import org.jspecify.annotations.NullMarked;
