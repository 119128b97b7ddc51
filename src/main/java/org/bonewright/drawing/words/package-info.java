/**
 * Says in words and numbers what the drawing shows: what is in the bone, every old track, and where
 * a plate's screws would find fresh bone.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: an account, as text or JSON. May use
 * case, bone and measures; knows nothing of the drawing.
 */
@NullMarked
package org.bonewright.drawing.words;

import org.jspecify.annotations.NullMarked;
