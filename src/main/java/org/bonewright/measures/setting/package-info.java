/**
 * Measures of which bone, which kind of implant, first operation or revision.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.measures.Reading} each. They may use the bone and the case, and read other
 * measures by their id.
 */
@NullMarked
package org.bonewright.measures.setting;

import org.jspecify.annotations.NullMarked;
