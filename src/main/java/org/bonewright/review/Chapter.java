package org.bonewright.review;

import java.util.List;
import java.util.Optional;

/**
 * The account of one operation, stage or plan.
 *
 * @param subject id of the subject
 * @param planned whether it is still to be done
 * @param what what was done, or is to be done, in a few clauses
 * @param outcome what became of it; empty for a plan
 * @param unexplained whether it failed and no technical principle was certainly unmet at major or
 *     more
 * @param hostBefore what the file said of the host before an unexplained failure and can slow union
 * @param fits findings of which one fits how it failed, in the order of the table of failure modes
 * @param others the other findings, the most severe first; for a plan all of them
 * @param met what was met
 * @param unknown what cannot be judged, the possibly worst first
 * @param noRecord names of principles that cannot be judged because nothing was recorded then
 * @param notApplicable how many principles do not apply
 */
public record Chapter(
    String subject,
    boolean planned,
    String what,
    Optional<String> outcome,
    boolean unexplained,
    List<String> hostBefore,
    List<Headline> fits,
    List<Headline> others,
    List<Line> met,
    List<Line> unknown,
    List<String> noRecord,
    int notApplicable) {

  /** Return where to look where nothing technical explains a failure; what was on file first. */
  public String lookAgain() {
    return (hostBefore.isEmpty()
            ? "Look again for infection, host and load,"
            : "On file before it: "
                + String.join(", ", hostBefore)
                + ". Look again for infection and load,")
        + " and at what is not looked at here.";
  }
}
