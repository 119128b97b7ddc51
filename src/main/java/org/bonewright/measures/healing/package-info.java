/**
 * Measures of healing: how much time has passed, what the films showed, and what it was called.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.measures.Reading} each. They may use the case, and read other measures by their
 * id.
 */
@NullMarked
package org.bonewright.measures.healing;

import org.jspecify.annotations.NullMarked;
