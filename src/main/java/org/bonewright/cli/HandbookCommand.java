package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.Map;
import java.util.concurrent.Callable;
import org.bonewright.handbook.HandbookSite;
import org.bonewright.principles.RuleSet;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the handbook: a site that needs no server, and one document to print. */
@Command(
    name = "handbook",
    mixinStandardHelpOptions = true,
    description =
        "Writes the handbook of all principles, measures, sources and terms: pages to browse from a"
            + " folder, without a server, and one PDF.",
    footerHeading = "%n",
    footer = {
      "Exit code: 0 written, 2 the folder cannot be used, 3 a fault of the program.",
      "",
      "Examples:",
      "  bonewright handbook --output handbook",
      "  bonewright handbook --output handbook --force"
    })
final class HandbookCommand implements Callable<Integer> {

  @Option(
      names = "--output",
      paramLabel = "DIR",
      required = true,
      description = "The folder to write to; it is made where there is none.")
  private String output = "";

  @Option(
      names = "--force",
      description =
          "Write to a folder that is not empty. Files of the same name are replaced, others are left.")
  private boolean force;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable {
    PrintWriter err = spec.commandLine().getErr();
    OutputFolder folder = OutputFolder.open(output, force);
    tell(err, "Reading cards and measures.");
    HandbookSite handbook = HandbookSite.of(RuleSet.built());
    Map<String, String> pages = handbook.files();
    tell(err, "Writing " + pages.size() + " files.");
    for (Map.Entry<String, String> page : pages.entrySet()) {
      folder.write(page.getKey(), page.getValue());
    }
    tell(err, "Making the PDF; this takes some seconds.");
    folder.write(HandbookSite.PDF, handbook.pdf());
    PrintWriter out = spec.commandLine().getOut();
    out.println(handbook.handbook().edition() + ": begin with " + folder.path("index.html") + ".");
    out.flush();
    return ExitCodes.DONE;
  }

  private static void tell(PrintWriter err, String words) {
    err.println(words);
    err.flush();
  }
}
