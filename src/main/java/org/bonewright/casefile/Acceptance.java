package org.bonewright.casefile;

import java.util.Optional;

/** An unmet principle that a surgeon accepts. */
public record Acceptance(
    @Meaning("The principle.")
        @Written(regex = "[a-z0-9]+(-[a-z0-9]+)*", inWords = "a principle's id")
        String principle,
    @Meaning("The operation or plan.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String on,
    @Meaning("The reason.") String reason,
    @Meaning("Role, not name.") String by,
    @Meaning("Day.") @Between(min = 0, max = 36500) Optional<Quantity> day) {}
