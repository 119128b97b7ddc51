/**
 * A small frame solver: nodes with six movements each, links between them, a banded Cholesky
 * factorisation, any number of loads. It knows nothing of bones.
 */
@NullMarked
package org.bonewright.mechanics.frame;

import org.jspecify.annotations.NullMarked;
