package org.bonewright.casefile;

import java.util.Optional;

/** What an operation does about infection. */
public record InfectionCare(
    @Meaning("Debridement of the site.") Optional<Answer> debridement,
    @Meaning("What happens to metal already there.") Optional<Implants> implants,
    @Meaning("Dead space dealt with.") Optional<Answer> deadSpace,
    @Meaning("Soft-tissue cover dealt with.") Optional<Answer> softTissueCover,
    @Meaning("Weeks of antibiotics, guided by culture.") @Between(min = 0, max = 52)
        Optional<Quantity> antibioticWeeks,
    @Meaning("Antibiotic carrier at the site.") Optional<Answer> localAntibiotic,
    @Meaning("Infection team involved.") Optional<Answer> team) {

  /** What happens to metal already there. */
  public enum Implants {
    REMOVED,
    EXCHANGED,
    KEPT,
    NONE_THERE
  }
}
