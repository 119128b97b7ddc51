/**
 * The implants that a hospital keeps: what a plan can be drawn with. Sizes only; no maker, no
 * brand.
 *
 * <p>Entry type: {@link org.bonewright.shelf.Shelf}. Enters: the part of a site file that lists
 * them, or nothing, for which {@link org.bonewright.shelf.UsualShelf} stands. It knows the case
 * file's words for sizes and nothing else.
 */
@NullMarked
package org.bonewright.shelf;

import org.jspecify.annotations.NullMarked;
