package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Reading;

/**
 * The verdict of one principle on one subject, with everything that led to it.
 *
 * @param card the principle
 * @param family its family
 * @param subject id of the subject
 * @param verdict the verdict
 * @param severity the severity after all steps: of an unmet verdict, or the worst that an unknown
 *     one may have; empty otherwise
 * @param steps the steps of severity, in order
 * @param labels labels such as "infection comes first"
 * @param readings what was read, by need; what is told beside the verdict, by the id of its measure
 * @param limits the limits that hold here, by name; a range where they hang on what is not known
 * @param turns where a single input, changed, would turn the verdict
 * @param share how many samples give the verdict, where a mechanical model has a part in it
 */
public record Judgement(
    Card card,
    Family family,
    String subject,
    Verdict verdict,
    Optional<Severity> severity,
    List<SeverityStep> steps,
    List<String> labels,
    Map<String, Reading> readings,
    Map<String, Dimension> limits,
    List<Turn> turns,
    Optional<SampleShare> share) {

  /** Return whether it is of this kind. */
  public boolean is(VerdictKind kind) {
    return verdict.kind() == kind;
  }
}
