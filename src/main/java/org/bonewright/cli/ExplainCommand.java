package org.bonewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bonewright.casefile.CaseFile;
import org.bonewright.change.ChangeFinder;
import org.bonewright.change.PlanChange;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.ChangeText;
import org.bonewright.report.ExplanationJson;
import org.bonewright.report.ExplanationText;
import org.bonewright.review.Explainer;
import org.bonewright.review.Explanation;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Explains a verdict. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description =
        "Explains one verdict: what was read and how it was worked out, the limits and where they"
            + " come from, which rule fired or which condition failed, what would turn it, and its"
            + " sources.",
    footerHeading = "%n",
    footer = {
      "Exit code: 0 explained, 2 the input cannot be used, 3 a fault of the program.",
      "",
      "Examples:",
      "  bonewright explain case.json plate-span-ratio                the plan, else the last operation",
      "  bonewright explain case.json plate-span-ratio --on op-2      one operation",
      "  bonewright explain case.json deep-samples --on plan-a        one plan, or its stages",
      "  bonewright explain case.json plate-span-ratio --on plan-a --changes",
      "  bonewright explain case.json plate-span-ratio --format json",
      "The names of all principles: bonewright principles"
    })
final class ExplainCommand implements Callable<Integer> {

  @CommandLine.Mixin private CaseChoice cases = new CaseChoice();

  @Parameters(index = "1", paramLabel = "PRINCIPLE", description = "The name of a principle.")
  private String principle = "";

  @Option(
      names = "--on",
      paramLabel = "ID",
      description =
          "The operation, plan or stage. Else the chosen plan, or the last operation where there is"
              + " no plan.")
  private @Nullable String on;

  @Option(
      names = "--changes",
      description =
          "Try the moves that the principle names on the plan, judge each in full, and tell those"
              + " that turn the verdict, with all else that they turn. May take a minute.")
  private boolean changes;

  @CommandLine.Mixin private FormatChoice format = new FormatChoice();

  @CommandLine.Mixin private OutputChoice output = new OutputChoice();

  @CommandLine.Mixin private SiteChoice site = new SiteChoice();

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable {
    CaseInput input = cases.read();
    CaseFile caseFile = input.caseFile();
    Local local = site.local();
    RuleSet rules = local.rules();
    if (rules.card(principle).isEmpty()) {
      throw new Unusable(unknown(rules));
    }
    SubjectChoice subjects = new SubjectChoice(caseFile);
    String subject = on == null ? subjects.usual().id() : subjects.named(on).id();
    Explainer.Explained explained = new Explainer(rules).of(caseFile);
    List<Explanation> found = explained.on(principle, subject);
    if (found.isEmpty()) {
      throw new Unusable(elsewhere(subject, explained.judgedOn(principle)));
    }
    cases.warn(input);
    Optional<List<PlanChange>> offered =
        changes ? Optional.of(changes(local, input.bytes(), found)) : Optional.empty();
    output.write(
        format.show(
            () ->
                ExplanationText.render(found)
                    + offered.map(all -> ChangeText.render(found, all)).orElse(""),
            () -> ExplanationJson.render(found, offered)));
    return ExitCodes.DONE;
  }

  private List<PlanChange> changes(Local local, byte[] bytes, List<Explanation> found) {
    ChangeFinder finder = new ChangeFinder(local.rules(), local.shelf());
    List<PlanChange> all = new ArrayList<>();
    for (Explanation explanation : found) {
      String subject = explanation.line().subject();
      spec.commandLine().getErr().println("trying changes to " + subject + " ...");
      spec.commandLine().getErr().flush();
      all.addAll(finder.changes(bytes, principle, subject));
    }
    return all;
  }

  private String elsewhere(String subject, List<String> judgedOn) {
    return principle
        + " is not judged on "
        + subject
        + "."
        + (judgedOn.isEmpty()
            ? " It is judged on nothing in this case."
            : " It is judged on: " + String.join(", ", judgedOn) + ".");
  }

  private String unknown(RuleSet rules) {
    List<String> alike =
        rules.cards().stream()
            .map(card -> card.id())
            .filter(id -> id.contains(principle.toLowerCase(Locale.ROOT)))
            .sorted()
            .toList();
    return "There is no principle "
        + principle
        + "."
        + (alike.isEmpty() ? "" : " There is: " + String.join(", ", alike) + ".")
        + " All are listed by: bonewright principles";
  }
}
