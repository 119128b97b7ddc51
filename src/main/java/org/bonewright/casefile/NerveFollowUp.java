package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** How a nerve that does not work is followed after an operation. */
public record NerveFollowUp(
    @Meaning("Week after the operation of the electrical test, if nothing has come back.")
        @Between(min = 0, max = 260)
        Optional<Quantity> electricalTestWeek,
    @Meaning("Weeks after the operation in which the nerve is examined again.")
        @Between(min = 0, max = 260)
        Optional<List<Quantity>> examinedWeeks,
    @Meaning("Week after the operation by which it is explored, if nothing has come back.")
        @Between(min = 0, max = 260)
        Optional<Quantity> exploredByWeek) {}
