package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bonewright.casefile.CaseFile;
import org.bonewright.change.Improvement;
import org.bonewright.change.Improver;
import org.bonewright.report.ImprovementJson;
import org.bonewright.report.ImprovementText;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Looks for another drawing of a plan that leaves nothing critical or major unmet. */
@Command(
    name = "improve",
    mixinStandardHelpOptions = true,
    description =
        "Walks from a drawn plan by single moves of the cards to one that leaves nothing critical"
            + " or major unmet, if there is one. Tells the steps, what each turns, the price, what"
            + " stays unmet and why, and what is to be found out. Options to discuss, not orders.",
    footerHeading = "%n",
    footer = {
      "Only the plan is changed, no fact. New implants come from the shelf of the",
      "site file, else from the usual sizes. JSON holds the plan as the steps",
      "leave it, too. It may take a minute or two.",
      "",
      "Exit code:",
      "  0  such a plan was found, or the plan needs none",
      "  1  none was found; why is told",
      "  2  the input cannot be used; every problem is listed",
      "  3  a fault of the program",
      "",
      "Examples:",
      "  bonewright improve case.json                     the chosen plan",
      "  bonewright improve case.json --plan plan-b",
      "  bonewright improve case.json --site site.json    local limits and shelf",
      "  bonewright improve case.json --format json --output options.json",
      "  bonewright improve case.json --tries 500         look longer"
    })
final class ImproveCommand implements Callable<Integer> {

  private static final int TELL_EVERY = 20;

  @CommandLine.Mixin private CaseChoice cases = new CaseChoice();

  @Option(
      names = "--plan",
      paramLabel = "ID",
      description = "The plan. Else the chosen one, or the only one.")
  private @Nullable String plan;

  @CommandLine.Mixin private SiteChoice site = new SiteChoice();

  @Option(
      names = "--tries",
      paramLabel = "N",
      description = "Judge so many plans at the most; usually " + Improver.USUAL_MOST + ".")
  private int tries = Improver.USUAL_MOST;

  @CommandLine.Mixin private FormatChoice format = new FormatChoice();

  @CommandLine.Mixin private OutputChoice output = new OutputChoice();

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable {
    if (tries < 1 || tries > Improver.HIGHEST_MOST) {
      throw new Unusable(
          "--tries takes a number from 1 to " + Improver.HIGHEST_MOST + ", not " + tries + ".");
    }
    CaseInput input = cases.read();
    CaseFile caseFile = input.caseFile();
    String chosen = chosen(caseFile);
    Local local = site.local();
    cases.warn(input);
    PrintWriter err = spec.commandLine().getErr();
    Improvement walk =
        new Improver(local.rules(), local.shelf(), tries, judged -> tell(err, judged))
            .improve(input.bytes(), chosen)
            .orElseThrow(() -> new IllegalStateException("read without error, not found again"));
    Review.Versions versions = Reviewer.versions(local.rules(), local.rules().usual());
    output.write(
        format.show(
            () -> ImprovementText.render(walk, versions),
            () -> ImprovementJson.render(walk, versions)));
    return walk.outcome().isEnough() ? ExitCodes.DONE : ExitCodes.NO_PLAN_FOUND;
  }

  private static void tell(PrintWriter err, int judged) {
    if (judged % TELL_EVERY == 0) {
      err.println("tried " + judged + " plans ...");
      err.flush();
    }
  }

  private String chosen(CaseFile caseFile) throws Unusable {
    List<String> plans = Improver.plans(caseFile);
    if (plans.isEmpty()) {
      throw new Unusable("The case has no plan with a stage: there is nothing to draw otherwise.");
    }
    String all = String.join(", ", plans);
    if (plan != null && !plans.contains(plan)) {
      throw new Unusable("There is no plan " + plan + " in this case. It has: " + all + ".");
    }
    return Optional.ofNullable(plan)
        .or(() -> Improver.usualPlan(caseFile))
        .orElseThrow(
            () -> new Unusable("No plan is chosen in this case; name one by --plan: " + all + "."));
  }
}
