package org.bonewright.casefile;

import java.util.Optional;

/** Graft and other biology. */
public record Graft(
    @Meaning("What.") Kind kind,
    @Meaning("Volume in mL.") @Between(min = 0, max = 300) Optional<Quantity> volumeMl,
    @Meaning("Where it was taken.") Optional<GraftDonor> donor) {

  /** Kinds of biology. */
  public enum Kind {
    AUTOGRAFT_CANCELLOUS,
    AUTOGRAFT_TRICORTICAL,
    REAMER_GRAFT,
    ALLOGRAFT,
    SUBSTITUTE,
    GROWTH_FACTOR,
    MARROW,
    MEMBRANE,
    /** A cement spacer round which a membrane forms; it comes out at a later stage. */
    SPACER,
    /** Bone chips raised with their soft tissue, no graft from elsewhere. */
    DECORTICATION,
    VASCULARISED_BONE
  }
}
