/**
 * Measures of lag screws that an operation puts in.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.measures.Reading} each. They may use the bone and the case, and read other
 * measures by their id. A lag screw that an earlier operation left is judged with that operation.
 */
@NullMarked
package org.bonewright.measures.lag;

import org.jspecify.annotations.NullMarked;
