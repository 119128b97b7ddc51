/**
 * A small frame solver: nodes with six movements each, links between them, a Cholesky factorisation
 * by blocks, any number of loads. It knows nothing of bones.
 */
@NullMarked
package org.bonewright.mechanics.frame;

import org.jspecify.annotations.NullMarked;
