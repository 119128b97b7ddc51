package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.bonewright.casefile.checking.MinimumSet;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Checks a case file without reviewing it. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Checks a case file and lists every problem; reviews nothing.",
    footerHeading = "%n",
    footer = {
      "Exit code: 0 usable, 2 not usable.",
      "",
      "Examples:",
      "  bonewright check case.json",
      "  bonewright check case.json --todo"
    })
final class CheckCommand implements Callable<Integer> {

  @CommandLine.Mixin private CaseChoice cases = new CaseChoice();

  @Option(
      names = "--todo",
      description = "Also list what of the minimum set for a useful review is missing.")
  private boolean todo;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable {
    CaseInput input = cases.read();
    PrintWriter out = spec.commandLine().getOut();
    out.print(input.warnings());
    out.println(
        input.warned() == 0
            ? "The file is usable; no problem found."
            : "The file is usable; " + input.warned() + " worth a second look.");
    if (todo) {
      todo(out, new MinimumSet(input.caseFile()).missing());
    }
    out.flush();
    return ExitCodes.DONE;
  }

  private static void todo(PrintWriter out, List<MinimumSet.Missing> missing) {
    if (missing.isEmpty()) {
      out.println("The minimum set for a useful review is complete.");
      return;
    }
    out.println("Missing of the minimum set for a useful review: " + missing.size());
    missing.forEach(m -> out.println("  " + m.pointer() + "  " + m.question()));
  }
}
