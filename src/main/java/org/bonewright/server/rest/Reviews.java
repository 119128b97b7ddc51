package org.bonewright.server.rest;

import java.util.Optional;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.casefile.reading.Reading;
import org.bonewright.page.ReviewPage;
import org.bonewright.principles.Profile;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.springframework.stereotype.Component;

/** Takes in cases and reviews them, one rule set for all requests. */
@Component
public class Reviews {

  private final Rulebook rulebook;
  private final Reviewer reviewer;

  Reviews(Rulebook rulebook) {
    this.rulebook = rulebook;
    this.reviewer = new Reviewer(rulebook.rules());
  }

  RuleSet rules() {
    return rulebook.rules();
  }

  /** Read and check a case. */
  Reading read(byte[] body) {
    return new Intake().read(body);
  }

  private Profile profile(Optional<String> named) throws UnknownProfile {
    return named.isEmpty()
        ? rulebook.profile()
        : rules().profile(named.get()).orElseThrow(() -> new UnknownProfile(named.get(), rules()));
  }

  /**
   * Review a case.
   *
   * @param profile the profile that is asked for, if one is
   * @throws UnknownProfile if there is no such profile
   * @throws UnusableCase if it has an error; the exception lists every problem
   */
  Review review(byte[] body, Optional<String> profile) throws UnusableCase, UnknownProfile {
    Profile shown = profile(profile);
    return reviewer.review(SentCase.of(body), shown);
  }

  /**
   * Review a case and put the review and its drawings on a page.
   *
   * @param profile the profile that is asked for, if one is
   * @throws UnknownProfile if there is no such profile
   * @throws UnusableCase if it has an error; the exception lists every problem
   */
  String page(byte[] body, Optional<String> profile) throws UnusableCase, UnknownProfile {
    Profile shown = profile(profile);
    CaseFile caseFile = SentCase.of(body);
    return ReviewPage.render(caseFile, reviewer.review(caseFile, shown));
  }

  /** Do everything that a request does, and keep nothing of it. */
  public void warm(byte[] body) {
    try {
      Review review = review(body, Optional.empty());
      String shown = new JsonReport().render(review) + new TextReport(false).render(review);
      if (shown.isEmpty()) {
        throw new IllegalStateException("an empty review");
      }
    } catch (UnusableCase | UnknownProfile fault) {
      throw new IllegalStateException("the demonstration case cannot be used", fault);
    }
  }
}
