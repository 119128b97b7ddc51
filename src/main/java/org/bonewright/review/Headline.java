package org.bonewright.review;

import java.util.List;

/**
 * Findings with one cause, gathered under the most severe of them; of equally severe ones the one
 * that fits a failure best.
 *
 * @param cause the cause, as a word
 * @param lead the finding that leads
 * @param nested the others
 * @param placedBy what put it in its place: failure mode, time of failure, severity, shortfall or
 *     name
 */
public record Headline(String cause, Line lead, List<Line> nested, String placedBy) {}
