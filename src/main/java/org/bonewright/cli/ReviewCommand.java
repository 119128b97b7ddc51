package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.reading.Reading;
import org.bonewright.page.ReviewPage;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.JsonReport;
import org.bonewright.report.TextReport;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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
    HTML;

    /** Return the format of this name, in capitals or not. */
    private static Format of(String word) {
      for (Format format : values()) {
        if (format.name().equalsIgnoreCase(word)) {
          return format;
        }
      }
      throw new CommandLine.TypeConversionException(
          "expected text, json or html, but was '" + word + "'");
    }
  }

  @Parameters(paramLabel = "CASE", description = "The case file; - is standard input.")
  private String file = "";

  @Option(
      names = "--format",
      paramLabel = "text|json|html",
      converter = FormatReader.class,
      description = "How to show it: text (the default), json, or html, a page to print.")
  private Format format = Format.TEXT;

  @Option(names = "--output", paramLabel = "FILE", description = "Write to this file.")
  private @Nullable String output;

  @Option(
      names = "--verbose",
      description = "Text with the arithmetic of each verdict and what would turn it.")
  private boolean verbose;

  /** Reads a format as help writes it. */
  static final class FormatReader implements CommandLine.ITypeConverter<Format> {
    @Override
    public Format convert(String word) {
      return Format.of(word);
    }
  }

  @CommandLine.Mixin private RulesChoice choice = new RulesChoice();

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable {
    Reading reading = new CaseInput(file).read();
    CaseFile caseFile = CaseInput.caseFile(reading);
    RuleSet rules = choice.rules();
    Review review = new Reviewer(rules).review(caseFile, choice.profile(rules));
    PrintWriter err = spec.commandLine().getErr();
    err.print(CaseInput.warnings(reading));
    err.flush();
    String text =
        switch (format) {
          case TEXT -> new TextReport(verbose).render(review);
          case JSON -> new JsonReport().render(review);
          case HTML -> ReviewPage.render(caseFile, review);
        };
    new Output(Optional.ofNullable(output), spec.commandLine().getOut()).write(text);
    return review.leavesCriticalOpen() ? ExitCodes.PLAN_LEAVES_CRITICAL : ExitCodes.DONE;
  }
}
