package org.bonewright.server.rest;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.change.Improvement;
import org.bonewright.change.Improver;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.springframework.stereotype.Component;

/** Takes in cases and walks from their plans, one rule set and one shelf for all requests. */
@Component
class Improvements {

  private final Rulebook rulebook;

  Improvements(Rulebook rulebook) {
    this.rulebook = rulebook;
  }

  /**
   * Walk from a plan.
   *
   * @param plan id of the plan, if one is named; else the chosen one, or the only one
   * @param tries how many plans are judged at the most
   * @throws UnusableCase if the case has an error; the exception lists every problem
   * @throws UnknownPlan if there is no such plan, or none is named and none chosen
   */
  Improvement of(byte[] body, Optional<String> plan, Tries tries) throws UnusableCase, UnknownPlan {
    CaseFile caseFile = SentCase.of(body);
    List<String> plans = Improver.plans(caseFile);
    String wanted =
        plan.or(() -> Improver.usualPlan(caseFile))
            .orElseThrow(() -> new UnknownPlan("No plan is named, and none is chosen.", plans));
    return new Improver(rulebook.rules(), rulebook.shelf(), tries.most(), judged -> {})
        .improve(body, wanted)
        .orElseThrow(() -> new UnknownPlan("There is no plan " + wanted + ".", plans));
  }

  /** Return what judges. */
  Review.Versions versions() {
    return Reviewer.versions(rulebook.rules(), rulebook.rules().usual());
  }
}
