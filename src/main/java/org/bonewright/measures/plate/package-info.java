/**
 * Measures of where plates lie and what their holes do.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.measures.Reading} each. They may use the bone and the case, and read other
 * measures by their id.
 */
@NullMarked
package org.bonewright.measures.plate;

import org.jspecify.annotations.NullMarked;
