package org.bonewright.review;

import java.util.List;

/**
 * Findings with one cause, gathered under the first of them: the one that fits a failure best, else
 * the most severe.
 *
 * @param cause the cause, as a word
 * @param lead the finding that leads
 * @param nested the others
 */
public record Headline(String cause, Line lead, List<Line> nested) {}
