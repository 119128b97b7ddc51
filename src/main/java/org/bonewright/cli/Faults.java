package org.bonewright.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Turns whatever goes wrong into a few plain words and an exit code; never into a stack trace. */
final class Faults {

  private Faults() {}

  static int wrongArguments(ParameterException fault, String[] args) {
    CommandLine command = fault.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(fault.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(fault, err);
    err.println("See: " + command.getCommandSpec().qualifiedName() + " --help");
    return ExitCodes.UNUSABLE;
  }

  static int failed(Exception fault, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    if (fault instanceof Unusable) {
      err.println(fault.getMessage());
      return ExitCodes.UNUSABLE;
    }
    err.println("Bonewright itself is at fault; nothing was reviewed. Please report this line:");
    err.println("  " + fault);
    return ExitCodes.INTERNAL;
  }
}
