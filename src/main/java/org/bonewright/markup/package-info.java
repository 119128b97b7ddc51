/**
 * HTML, written element by element. Enters: texts. Leaves: well-formed markup, whatever the texts
 * hold. It knows nothing of what is written.
 */
@NullMarked
package org.bonewright.markup;

import org.jspecify.annotations.NullMarked;
