package org.bonewright.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The option that sends an answer to a file. */
final class OutputChoice {

  @Option(names = "--output", paramLabel = "FILE", description = "Write to this file.")
  private @Nullable String file;

  @CommandLine.Spec(CommandLine.Spec.Target.MIXEE)
  private CommandLine.Model.CommandSpec command;

  /**
   * Write the answer to the file that is named, else to standard output.
   *
   * @throws Unusable if the file cannot be written
   */
  void write(String answer) throws Unusable {
    new Output(Optional.ofNullable(file), command.commandLine().getOut()).write(answer);
  }
}
