/**
 * Puts a review and the drawings of its case together into one page. Enters: a case and its review.
 * Leaves: HTML. It chooses what is drawn and computes nothing; it may use everything before it, and
 * the renderers.
 */
@NullMarked
package org.bonewright.page;

import org.jspecify.annotations.NullMarked;
