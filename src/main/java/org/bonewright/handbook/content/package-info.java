/**
 * Makes the pages of the handbook from cards and measures. Enters: a rule set, the examples of its
 * cards, the glossary. Leaves: a {@link org.bonewright.handbook.model.Handbook}. Nothing is told of
 * a principle that its card, its examples or its measures do not say.
 */
@NullMarked
package org.bonewright.handbook.content;

import org.jspecify.annotations.NullMarked;
