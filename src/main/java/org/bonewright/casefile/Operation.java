package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** One operation: done, or a stage of a plan that is still to be done. */
public record Operation(
    @Meaning("Name of the operation in this file.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String id,
    @Meaning("Day after the injury; left out in a plan.") @Between(min = 0, max = 36500)
        Optional<Quantity> day,
    @Meaning("Days after the operation or stage before it; only in a plan, where there is no day.")
        @Between(min = 0, max = 3650)
        Optional<Quantity> daysAfterStageBefore,
    @Meaning("What it was, in a few words; shown, never used by a rule.") Optional<String> title,
    @Meaning("The kind of stability intended.") Optional<Concept> concept,
    @Meaning("The surgical approach.") Optional<Approach> approach,
    @Meaning("The reduction as left at the end.") Optional<Reduction> reduction,
    @Meaning("Compression of the line.") Optional<Compression> compression,
    @Meaning("Everything put in; an empty list means nothing.") Optional<List<Implant>> fixation,
    @Meaning("How the bone ends were prepared.") Optional<EndPreparation> endsPrepared,
    @Meaning("Bone taken out; an empty list means none.") Optional<List<Resection>> resection,
    @Meaning(
            "Whether the fibula, or the other bone of the forearm, is cut or shortened in the same operation.")
        Optional<Answer> companionCut,
    @Meaning("Graft and other biology; an empty list means none.") Optional<List<Graft>> biology,
    @Meaning("Moving a piece of bone along to fill a defect.") Optional<BoneTransport> transport,
    @Meaning("Deep sampling.") Optional<Sampling> samples,
    @Meaning("What is done about infection.") Optional<InfectionCare> infectionCare,
    @Meaning("How the nerve at risk was handled.") Optional<NerveHandling> nerve,
    @Meaning("Percent of the circumference stripped of soft tissue.") @Between(min = 0, max = 100)
        Optional<Quantity> strippedPercent,
    @Meaning(
            "Skin in mm between the new incision and the nearest old one beside it; 0 where an old one is used again.")
        @Between(min = 0, max = 300)
        Optional<Quantity> skinBridgeMm,
    @Meaning("Metal taken out; an empty list means none.") Optional<List<Removal>> removed,
    @Meaning("What is done about metal that earlier operations left; an empty list means nothing.")
        Optional<List<PieceDecision>> pieces,
    @Meaning("Aftercare as ordered.") Optional<Aftercare> aftercare,
    @Meaning("What became of it; left out in a plan.") Optional<Outcome> outcome) {

  /** Return an operation of which nothing is said but its name and perhaps its day. */
  public static Operation named(String id, Optional<Quantity> day) {
    return new Operation(
        id,
        day,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /**
   * Return the operation as a stage of a plan means it: a plan is closed, so metal, resection and
   * graft that it does not name are not planned.
   */
  public Operation asPlanned() {
    return new Operation(
        id,
        day,
        daysAfterStageBefore,
        title,
        concept,
        approach,
        reduction,
        compression,
        Optional.of(fixation.orElse(List.of())),
        endsPrepared,
        Optional.of(resection.orElse(List.of())),
        companionCut,
        Optional.of(biology.orElse(List.of())),
        transport,
        samples,
        infectionCare,
        nerve,
        strippedPercent,
        skinBridgeMm,
        removed,
        Optional.of(pieces.orElse(List.of())),
        aftercare,
        outcome);
  }

  /**
   * Return whether it put in a plate, nail or fixator; an empty answer where the file is silent.
   */
  public Optional<Boolean> carriesMainImplant() {
    return fixation.map(put -> put.stream().anyMatch(Implant::isMain));
  }

  /** Return whether it was a stage that did what it was for, and was to unite nothing. */
  public boolean wasOnlyAStage() {
    return outcome.map(known -> known.result() == Outcome.Result.STAGE_DONE).orElse(false);
  }

  /** The surgical approach. */
  public enum Approach {
    ANTERIOR,
    ANTEROLATERAL,
    LATERAL,
    POSTEROLATERAL,
    POSTERIOR,
    POSTEROMEDIAL,
    MEDIAL,
    ANTEROMEDIAL,
    /** Through small incisions away from the line. */
    CLOSED
  }
}
