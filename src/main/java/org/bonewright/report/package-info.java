/**
 * Shows a review as text and as JSON.
 *
 * <p>Enters: a {@link org.bonewright.review.Review}. Leaves: text for a terminal, or JSON for other
 * programs. Nothing is computed here; what a renderer would have to work out belongs in the review.
 */
@NullMarked
package org.bonewright.report;

import org.jspecify.annotations.NullMarked;
