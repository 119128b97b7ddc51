/**
 * A review as a page to print. Enters: a review and drawings, made before. Leaves: one HTML file
 * that needs nothing else, neither script nor network. It computes nothing; it may use the review
 * and the words of principles.
 */
@NullMarked
package org.bonewright.report.html;

import org.jspecify.annotations.NullMarked;
