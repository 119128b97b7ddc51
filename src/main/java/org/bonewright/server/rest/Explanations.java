package org.bonewright.server.rest;

import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.bonewright.change.ChangeFinder;
import org.bonewright.change.PlanChange;
import org.bonewright.review.Explainer;
import org.bonewright.review.Explanation;
import org.springframework.stereotype.Component;

/** Takes in cases and explains verdicts on them, one rule set for all requests. */
@Component
class Explanations {

  private final Rulebook rulebook;
  private final Explainer explainer;
  private final ChangeFinder finder;

  Explanations(Rulebook rulebook) {
    this.rulebook = rulebook;
    this.explainer = new Explainer(rulebook.rules());
    this.finder = new ChangeFinder(rulebook.rules(), rulebook.shelf());
  }

  /**
   * Explain a verdict.
   *
   * @param principle id of the principle
   * @param on id of the operation, plan or stage
   * @throws UnknownPrinciple if there is no such principle
   * @throws UnusableCase if the case has an error; the exception lists every problem
   * @throws NotJudgedThere if the principle is not judged on that; the message says on what it is
   */
  List<Explanation> of(byte[] body, String principle, String on)
      throws UnusableCase, UnknownPrinciple, NotJudgedThere {
    if (rulebook.rules().card(principle).isEmpty()) {
      throw new UnknownPrinciple(principle);
    }
    CaseFile caseFile = SentCase.of(body);
    Explainer.Explained explained = explainer.of(caseFile);
    List<Explanation> found = explained.on(principle, on);
    if (found.isEmpty()) {
      throw new NotJudgedThere(principle, on, explained.judgedOn(principle));
    }
    return found;
  }

  /** Return the changes to the plan that turn these verdicts; the case was read before. */
  List<PlanChange> changes(byte[] body, List<Explanation> found) {
    return found.stream()
        .map(Explanation::line)
        .flatMap(line -> finder.changes(body, line.principle(), line.subject()).stream())
        .toList();
  }
}
