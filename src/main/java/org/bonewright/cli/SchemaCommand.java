package org.bonewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.bonewright.casefile.CaseFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Prints the schema of case files. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "Prints the JSON Schema (draft 2020-12) of case files.",
    footerHeading = "%n",
    footer = {"Example:", "  bonewright schema > case.schema.json"})
final class SchemaCommand implements Callable<Integer> {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    try (InputStream in = CaseFile.class.getResourceAsStream("case.schema.json")) {
      if (in == null) {
        throw new IllegalStateException("built without its schema");
      }
      out.print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    out.flush();
    return ExitCodes.DONE;
  }
}
