package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.SiteChanges;
import org.bonewright.report.CatalogueText;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Checks a site file. */
@Command(
    name = "site",
    mixinStandardHelpOptions = true,
    description =
        "Checks a site file against every principle, and shows what it sets beside what is"
            + " published; judges nothing.",
    footerHeading = "%n",
    footer = {
      "Exit code: 0 usable, 2 not usable; every problem is listed.",
      "",
      "Examples:",
      "  bonewright site site.json",
      "  bonewright review case.json --site site.json"
    })
final class SiteCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FILE", description = "The site file; - is standard input.")
  private String file = "";

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable {
    RuleSet published = RuleSet.built();
    SiteChanges changes = RulesChoice.changes(file, published);
    PrintWriter out = spec.commandLine().getOut();
    out.println("The file is usable.");
    out.print(new CatalogueText(published).site(changes));
    out.flush();
    return ExitCodes.DONE;
  }
}
