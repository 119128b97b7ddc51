package org.bonewright.site;

import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Written;
import org.bonewright.principles.Severity;

/**
 * A severity set instead of a published one, as it was written.
 *
 * @param principle id of the principle
 * @param from a severity that its rules give
 * @param to what counts instead
 * @param reason why
 * @param by role of who answers for it
 * @param on ISO date
 */
@Meaning("A severity that counts here instead of the published one; it moves no verdict.")
public record SeverityChange(
    @Meaning("The principle.")
        @Written(regex = "[a-z0-9]+(-[a-z0-9]+)*", inWords = "a principle's id")
        String principle,
    @Meaning("A severity that the principle gives.") Severity from,
    @Meaning("What counts instead.") Severity to,
    @Meaning("Why it differs.") String reason,
    @Meaning("Role of who answers for it, not a name.") String by,
    @Meaning("Day on which it was set.")
        @Written(regex = "[0-9]{4}-[0-9]{2}-[0-9]{2}", inWords = "a date such as 2026-03-31")
        String on)
    implements Change {}
