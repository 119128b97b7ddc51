/**
 * The frame model of a fixed bone: bone, plates, screws, nail and strut as beams and springs, and
 * the fracture as two ends that may meet. Enters: a {@link
 * org.bonewright.mechanics.construct.FixedBone} and loads. Leaves: movements, forces and stresses.
 */
@NullMarked
package org.bonewright.mechanics.model;

import org.jspecify.annotations.NullMarked;
