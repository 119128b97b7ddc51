/**
 * Principles of fixation: cards, the worlds in which they are judged, and verdicts.
 *
 * <p>Enters: readings of measures for one subject. Leaves: one {@link
 * org.bonewright.principles.Judgement} for each principle and subject. A rule never sees an
 * unknown: every way in which the readings can still fall becomes a {@link
 * org.bonewright.principles.World}, each world is judged by ordinary two-valued rules, and only
 * agreement of all of them is a verdict. The rules themselves live in the folder {@code rules/}.
 */
@NullMarked
package org.bonewright.principles;

import org.jspecify.annotations.NullMarked;
