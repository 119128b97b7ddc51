/**
 * What the frame model answers: records only. Movements are those of the distal part against the
 * proximal one, in mm and rad; where there is preload they are counted from the preloaded state.
 */
@NullMarked
package org.bonewright.mechanics.answer;

import org.jspecify.annotations.NullMarked;
