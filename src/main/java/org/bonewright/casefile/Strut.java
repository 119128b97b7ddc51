package org.bonewright.casefile;

import java.util.Optional;

/** A structural graft. */
@Kind("strut")
public record Strut(
    @Meaning("Name of the implant within its operation.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String id,
    @Meaning("Inside or on the bone.") Where where,
    @Meaning("Where it comes from.") Optional<Origin> origin,
    @Meaning("Level in mm of its near end.") @Between(min = 0, max = 600) Quantity fromMm,
    @Meaning("Level in mm of its far end.") @Between(min = 0, max = 600) Quantity toMm,
    @Meaning("Diameter or width in mm.") @Between(min = 3, max = 40) Optional<Quantity> outerMm,
    @Meaning("Wall in mm.") @Between(min = 0.5, max = 12) Optional<Quantity> wallMm,
    @Meaning("Surface of an onlay strut.") Optional<Direction> surface)
    implements Implant {

  /** Where a strut lies. */
  public enum Where {
    INTRAMEDULLARY,
    ONLAY
  }

  /** Where a strut comes from. */
  public enum Origin {
    AUTOGRAFT,
    AUTOGRAFT_VASCULARISED,
    ALLOGRAFT
  }
}
