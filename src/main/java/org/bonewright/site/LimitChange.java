package org.bonewright.site;

import java.util.Optional;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Written;

/**
 * A limit set instead of a published one, as it was written.
 *
 * @param principle id of the principle
 * @param limit name of the limit on the principle's card
 * @param where the words for which it holds; empty for a limit of a single value
 * @param value the local value, in {@code unit}
 * @param unit UCUM unit of the measure that the limit cuts
 * @param reason why
 * @param by role of who answers for it
 * @param on ISO date
 */
@Meaning("A limit that holds here instead of the published one.")
public record LimitChange(
    @Meaning("The principle.")
        @Written(regex = "[a-z0-9]+(-[a-z0-9]+)*", inWords = "a principle's id")
        String principle,
    @Meaning("Name of the limit, as the principle lists it.")
        @Written(regex = "[A-Za-z][A-Za-z0-9]*", inWords = "the name of a limit")
        String limit,
    @Meaning("The words for which it holds; left out where the limit has a single value.")
        Optional<String> where,
    @Meaning("The local value.") double value,
    @Meaning("Unit of the value (UCUM), that of the measure which the limit cuts; 1 for a number.")
        String unit,
    @Meaning("Why it differs.") String reason,
    @Meaning("Role of who answers for it, not a name.") String by,
    @Meaning("Day on which it was set.")
        @Written(regex = "[0-9]{4}-[0-9]{2}-[0-9]{2}", inWords = "a date such as 2026-03-31")
        String on)
    implements Change {}
