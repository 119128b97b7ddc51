package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.bonewright.principles.RuleSet;
import org.bonewright.report.CatalogueText;
import org.bonewright.report.ShelfText;
import org.bonewright.site.SiteReading;
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
    SiteReading reading = Local.read(file, published);
    PrintWriter out = spec.commandLine().getOut();
    out.println("The file is usable.");
    reading.changes().ifPresent(set -> out.print(new CatalogueText(published).site(set)));
    reading.shelf().ifPresent(shelf -> out.print(ShelfText.render(shelf)));
    out.flush();
    return ExitCodes.DONE;
  }
}
