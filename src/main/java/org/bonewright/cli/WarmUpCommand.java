package org.bonewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Callable;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import picocli.CommandLine.Command;

/**
 * Loads everything that a review loads, on a demonstration case; the start script archives what was
 * loaded, so that later starts are quick.
 */
@Command(name = "warm-up", hidden = true, description = "Loads what a review loads.")
final class WarmUpCommand implements Callable<Integer> {

  private static final String DEMO = "/cases/demo/femur-three-operations/case.json";

  @Override
  public Integer call() throws IOException {
    try (InputStream in = WarmUpCommand.class.getResourceAsStream(DEMO)) {
      if (in == null) {
        throw new IllegalStateException("built without " + DEMO);
      }
      Review review =
          new Reviewer(RuleSet.built())
              .review(new Intake().read(in.readAllBytes()).caseFile().orElseThrow());
      String shown = new TextReport(true).render(review) + new JsonReport().render(review);
      return shown.isEmpty() ? ExitCodes.INTERNAL : ExitCodes.DONE;
    }
  }
}
