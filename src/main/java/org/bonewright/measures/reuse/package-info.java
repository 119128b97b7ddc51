/**
 * Measures of bone that earlier operations have used: old tracks, fresh bone, metal left inside.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.measures.Reading} each. They may use the bone and the case, and read other
 * measures by their id.
 */
@NullMarked
package org.bonewright.measures.reuse;

import org.jspecify.annotations.NullMarked;
