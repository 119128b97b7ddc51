/**
 * Measures of the fracture line and its zone: pattern, gap, contact, how it was dealt with.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.measures.Reading} each. They may use the bone and the case, and read other
 * measures by their id.
 */
@NullMarked
package org.bonewright.measures.line;

import org.jspecify.annotations.NullMarked;
