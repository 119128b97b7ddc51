package org.bonewright.server.rest;

import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.casefile.reading.Reading;
import org.bonewright.page.ReviewPage;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.springframework.stereotype.Component;

/** Takes in cases and reviews them, one rule set for all requests. */
@Component
public class Reviews {

  private final RuleSet rules = RuleSet.built();
  private final Reviewer reviewer = new Reviewer(rules);

  RuleSet rules() {
    return rules;
  }

  /** Read and check a case. */
  Reading read(byte[] body) {
    return new Intake().read(body);
  }

  /**
   * Review a case.
   *
   * @throws UnusableCase if it has an error; the exception lists every problem
   */
  Review review(byte[] body) throws UnusableCase {
    return reviewer.review(caseFile(body));
  }

  /**
   * Review a case and put the review and its drawings on a page.
   *
   * @throws UnusableCase if it has an error; the exception lists every problem
   */
  String page(byte[] body) throws UnusableCase {
    CaseFile caseFile = caseFile(body);
    return ReviewPage.render(caseFile, reviewer.review(caseFile));
  }

  private CaseFile caseFile(byte[] body) throws UnusableCase {
    Reading reading = read(body);
    return reading.caseFile().orElseThrow(() -> new UnusableCase(reading.problems()));
  }

  /** Do everything that a request does, and keep nothing of it. */
  public void warm(byte[] body) {
    try {
      Review review = review(body);
      String shown = new JsonReport().render(review) + new TextReport(false).render(review);
      if (shown.isEmpty()) {
        throw new IllegalStateException("an empty review");
      }
    } catch (UnusableCase fault) {
      throw new IllegalStateException("the demonstration case cannot be used", fault);
    }
  }
}
