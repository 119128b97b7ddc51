/**
 * Measures of nails and their bolts.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.measures.Reading} each. They may use the bone and the case, and read other
 * measures by their id.
 */
@NullMarked
package org.bonewright.measures.nail;

import org.jspecify.annotations.NullMarked;
