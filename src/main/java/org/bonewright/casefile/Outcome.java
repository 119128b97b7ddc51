package org.bonewright.casefile;

import java.util.Optional;

/** What became of an operation. */
public record Outcome(
    @Meaning("The result.") Result result,
    @Meaning("Day after the injury on which it was clear.") @Between(min = 0, max = 36500)
        Optional<Quantity> day,
    @Meaning(
            "Weeks from the operation to the day on which it was clear; where the days are not known.")
        @Between(min = 0, max = 5220)
        Optional<Quantity> weeksAfter,
    @Meaning("How it failed.") Optional<FailureMode> mode,
    @Meaning("The plate hole at which metal broke.") @Between(min = 1, max = 30)
        Optional<Integer> hole,
    @Meaning("Words for the reader; never used by a rule.") Optional<String> note) {

  /** The result of an operation. */
  public enum Result {
    UNITED,
    FAILED,
    /** It did what this stage was for; a further operation was always intended. */
    STAGE_DONE,
    /** Not yet decided. */
    UNDER_WAY,
    UNKNOWN
  }
}
