/**
 * Measures of how the bone stands: angles, rotation, length, the fit of the forearm, and what a
 * deformity, a stiff joint or a steep line do to it. Enters: a scene. Leaves: readings. May use
 * casefile, bone, and the other measures through the scene.
 */
@NullMarked
package org.bonewright.measures.alignment;

import org.jspecify.annotations.NullMarked;
