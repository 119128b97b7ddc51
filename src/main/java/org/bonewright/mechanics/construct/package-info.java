/**
 * A fixed bone in numbers: what goes into the model. Records only; nothing is computed here.
 *
 * <p>Levels are mm along the bone from the centre of the fracture, negative towards its proximal
 * end. Azimuths are degrees around the bone from the side of the first plate.
 */
@NullMarked
package org.bonewright.mechanics.construct;

import org.jspecify.annotations.NullMarked;
