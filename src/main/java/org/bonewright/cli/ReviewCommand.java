package org.bonewright.cli;

import java.util.concurrent.Callable;
import org.bonewright.casefile.CaseFile;
import org.bonewright.page.ReviewPage;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Reviews a case. */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    description =
        "Reviews a case: what each operation got right and wrong, what to find out first, what the"
            + " plan must achieve and whether it does.",
    footerHeading = "%n",
    footer = {
      "Exit code:",
      "  0  reviewed",
      "  1  reviewed; the plan leaves a critical principle unmet, accepted or not, or unknown",
      "     though it could be answered before surgery; of several plans the chosen one counts,",
      "     where none is chosen each of them",
      "  2  the input cannot be used; every problem is listed",
      "  3  a fault of the program",
      "",
      "Examples:",
      "  bonewright review case.json",
      "  bonewright review case.json --verbose",
      "  bonewright review case.json --format json --output review.json",
      "  bonewright review case.json --format html --output review.html",
      "  bonewright review case.json --site site.json --profile exam",
      "  cat case.json | bonewright review -"
    })
final class ReviewCommand implements Callable<Integer> {

  /** How the review is shown. */
  enum Format {
    TEXT,
    JSON,
    HTML
  }

  /** Reads a format as help writes it. */
  static final class FormatReader extends WordReader<Format> {
    FormatReader() {
      super(Format.values());
    }
  }

  @CommandLine.Mixin private CaseChoice cases = new CaseChoice();

  @Option(
      names = "--format",
      paramLabel = "text|json|html",
      converter = FormatReader.class,
      description = "How to show it: text (the default), json, or html, a page to print.")
  private Format format = Format.TEXT;

  @CommandLine.Mixin private OutputChoice output = new OutputChoice();

  @Option(
      names = "--verbose",
      description = "Text with the arithmetic of each verdict and what would turn it.")
  private boolean verbose;

  @CommandLine.Mixin private RulesChoice choice = new RulesChoice();

  @Override
  public Integer call() throws Unusable {
    CaseInput input = cases.read();
    CaseFile caseFile = input.caseFile();
    RuleSet rules = choice.rules();
    Review review = new Reviewer(rules).review(caseFile, choice.profile(rules));
    cases.warn(input);
    String text =
        switch (format) {
          case TEXT -> new TextReport(verbose).render(review);
          case JSON -> new JsonReport().render(review);
          case HTML -> ReviewPage.render(caseFile, review);
        };
    output.write(text);
    return review.leavesCriticalOpen() ? ExitCodes.PLAN_LEAVES_CRITICAL : ExitCodes.DONE;
  }
}
