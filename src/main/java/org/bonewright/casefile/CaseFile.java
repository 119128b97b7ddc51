package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/**
 * A whole case: the patient, the bone, the injury, everything done since, and the plan for the next
 * operation.
 */
public record CaseFile(
    @Meaning("The format and its version.")
        @Written(regex = "bonewright/case/1", inWords = "bonewright/case/1")
        String schema,
    @Meaning("The hospital's own pseudonym for the case; no name, birth date or record number.")
        @Written(
            regex = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}",
            inWords = "letters, digits, dots, underscores and hyphens, at most 64")
        String reference,
    @Meaning("Where the case comes from.") Provenance provenance,
    @Meaning("The published text that a case with provenance published follows.")
        Optional<String> source,
    @Meaning("The patient, without anything that identifies a person.") Patient patient,
    @Meaning("The broken bone.") Bone bone,
    @Meaning("The fibula, or the other bone of the forearm.") Optional<Companion> companion,
    @Meaning("The first injury; it happened on day 0.") Injury injury,
    @Meaning(
            "What the bone of this patient bears at the fracture with no limit to the load, an entry for each activity, 5 at most; instead of the table's. A load limit scales it down, to a tenth where nothing may be borne (our convention).")
        List<BoneLoad> loads,
    @Meaning(
            "What was found, each with its day; an operation is judged on what was known before it.")
        List<Finding> findings,
    @Meaning("Every operation so far, in order of time.") List<Operation> operations,
    @Meaning("Treatment without an operation.") List<NonOperativeTreatment> nonOperative,
    @Meaning("What is drawn up for the next operation.") List<Plan> plans,
    @Meaning("Unmet principles that a surgeon accepts, with the reason.")
        List<Acceptance> accepted) {

  /** Return the same case as it is told without any plan. */
  public CaseFile withoutPlans() {
    return new CaseFile(
        schema,
        reference,
        provenance,
        source,
        patient,
        bone,
        companion,
        injury,
        loads,
        findings,
        operations,
        nonOperative,
        List.of(),
        List.of());
  }

  /** Where a case comes from. */
  public enum Provenance {
    /** Made up for demonstration or teaching. */
    INVENTED,
    /** Follows a published report, named in {@code source}. */
    PUBLISHED,
    /** A real patient under a pseudonym. */
    CLINICAL
  }
}
