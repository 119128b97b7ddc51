package org.bonewright.principles;

/**
 * A verdict as the rules of precedence see it.
 *
 * @param principle id of the principle
 * @param family id of its family
 * @param cause what findings of the principle come from, as its card says
 * @param subject id of the subject
 * @param round place of the subject in the history; every stage of a plan, and the plan itself,
 *     share the place after the last operation
 * @param verdict the verdict as a word
 * @param disputedLimit whether the limit that decided is one that the literature disagrees on
 */
public record Judged(
    String principle,
    String family,
    String cause,
    String subject,
    int round,
    String verdict,
    boolean disputedLimit) {}
