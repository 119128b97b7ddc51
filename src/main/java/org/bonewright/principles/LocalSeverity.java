package org.bonewright.principles;

/**
 * A severity that a site has set instead of the published one. It is the first step of severity,
 * and never touches a verdict.
 *
 * @param principle id of the principle
 * @param from the published severity, one that the rules give
 * @param to what counts instead
 * @param grounds why, by whom and when
 */
public record LocalSeverity(
    String principle, Severity from, Severity to, LocalLimit.Grounds grounds) {}
