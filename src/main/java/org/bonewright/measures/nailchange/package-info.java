/**
 * Measures of what a revision does with a nail that did not bring union: exchange, a plate over it,
 * bolts out.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.measures.Reading} each. They may use the bone and the case, and read other
 * measures by their id, also those of the operation before.
 */
@NullMarked
package org.bonewright.measures.nailchange;

import org.jspecify.annotations.NullMarked;
