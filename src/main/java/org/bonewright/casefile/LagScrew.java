package org.bonewright.casefile;

import java.util.Optional;

/** A lag screw across the line. */
@Kind("lag-screw")
public record LagScrew(
    @Meaning("Name of the implant within its operation.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String id,
    @Meaning("Thread diameter in mm.") @Between(min = 1, max = 10) Optional<Quantity> diameterMm,
    @Meaning("Level of entry in mm.") @Between(min = 0, max = 600) Optional<Quantity> atMm,
    @Meaning("Level of exit in mm.") @Between(min = 0, max = 600) Optional<Quantity> exitMm,
    @Meaning("Direction in which it was put in.") Optional<Direction> direction,
    @Meaning("Angle to the fracture line in degrees.") @Between(min = 0, max = 90)
        Optional<Quantity> angleToLineDeg,
    @Meaning(
            "Whether its thread leaves the near fragment free: a gliding hole, or a shank without thread there.")
        Optional<Answer> glidingHole,
    @Meaning("Id of the plate it passes through.") Optional<String> throughPlate,
    @Meaning("Hole of that plate.") @Between(min = 1, max = 30) Optional<Integer> hole)
    implements Implant {}
