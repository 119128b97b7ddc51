/**
 * Every input that a principle may use, as a named measure with its working.
 *
 * <p>Enters: a {@link org.bonewright.measures.Subject}, an operation or a plan with everything
 * known when it began. Leaves: one {@link org.bonewright.measures.Reading} for each measure of the
 * {@link org.bonewright.measures.MeasureCatalogue}: a number or word, a range or choice, unknown
 * with what is missing, or none with the reason. Principles never compute; whatever needs
 * arithmetic is a measure. Measures judge nothing.
 */
@NullMarked
package org.bonewright.measures;

import org.jspecify.annotations.NullMarked;
