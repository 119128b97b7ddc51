package org.bonewright.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Parameters;

/** The case file that a command takes, and what is said of it beside the answer. */
final class CaseChoice {

  @Parameters(index = "0", paramLabel = "CASE", description = "The case file; - is standard input.")
  private String file = "";

  @CommandLine.Spec(CommandLine.Spec.Target.MIXEE)
  private CommandLine.Model.CommandSpec command;

  /**
   * Read and check the file.
   *
   * @throws Unusable if it cannot be read, or has an error; the message lists every problem
   */
  CaseInput read() throws Unusable {
    return CaseInput.read(file);
  }

  /** Tell what is worth a second look in the case, beside the answer. */
  void warn(CaseInput input) {
    PrintWriter err = command.commandLine().getErr();
    err.print(input.warnings());
    err.flush();
  }
}
