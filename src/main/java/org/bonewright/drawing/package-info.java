/**
 * Draws one subject of a case to scale, as SVG, in two views: the bone from the side, and its outer
 * surface unrolled.
 *
 * <p>Enters: a {@link org.bonewright.measures.Scene}. Leaves: a {@link
 * org.bonewright.drawing.Picture}, shapes and labels on a sheet, which {@link
 * org.bonewright.drawing.SvgWriter} writes out. Kinds are told apart by shape, hatch and label;
 * colour only helps. Nothing is judged, and what has no known place is named in a note, never given
 * one. May use case, bone and measures, and the words of the account beside.
 */
@NullMarked
package org.bonewright.drawing;

import org.jspecify.annotations.NullMarked;
