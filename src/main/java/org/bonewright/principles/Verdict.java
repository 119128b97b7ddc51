package org.bonewright.principles;

import java.util.List;
import java.util.Set;
import org.bonewright.measures.MissingFact;

/** What a principle says of a subject. */
public sealed interface Verdict {

  /** Return which of the four it is. */
  VerdictKind kind();

  /** The principle is kept, in every way the inputs may still fall. */
  record Met() implements Verdict {
    @Override
    public VerdictKind kind() {
      return VerdictKind.MET;
    }
  }

  /**
   * The principle is not kept, in every way the inputs may still fall.
   *
   * @param severity the severity by the rule, the worst of the possible ones
   * @param mildest the mildest of the possible ones
   * @param limit the limit that decided the worst one; a certain one if there is such
   * @param certain the limits that are certainly not kept, the gravest first, one for each need
   */
  record Unmet(Severity severity, Severity mildest, String limit, List<String> certain)
      implements Verdict {

    public Unmet {
      certain = List.copyOf(certain);
    }

    @Override
    public VerdictKind kind() {
      return VerdictKind.UNMET;
    }
  }

  /**
   * It depends on what is not known.
   *
   * @param possible the verdicts that are still possible
   * @param worst the worst severity among them
   * @param asks what is missing and matters, in order
   * @param settles those of it that would each settle the verdict alone
   */
  record Unknown(
      Set<VerdictKind> possible, Severity worst, List<MissingFact> asks, List<MissingFact> settles)
      implements Verdict {

    public Unknown {
      possible = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(possible));
      asks = List.copyOf(asks);
      settles = List.copyOf(settles);
    }

    @Override
    public VerdictKind kind() {
      return VerdictKind.UNKNOWN;
    }
  }

  /** The principle has nothing to say of this subject. */
  record NotApplicable() implements Verdict {
    @Override
    public VerdictKind kind() {
      return VerdictKind.NOT_APPLICABLE;
    }
  }
}
