package org.bonewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.bonewright.casefile.reading.CaseSchema;
import org.bonewright.site.SiteSchema;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the schema of case files, or of site files. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "Prints the JSON Schema (draft 2020-12) of case files, or of site files.",
    footerHeading = "%n",
    footer = {
      "Examples:",
      "  bonewright schema > case.schema.json",
      "  bonewright schema site > site.schema.json"
    })
final class SchemaCommand implements Callable<Integer> {

  /** The kinds of file. */
  enum Kind {
    CASE,
    SITE
  }

  @Parameters(
      arity = "0..1",
      paramLabel = "case|site",
      description = "The kind of file: case (the default) or site.")
  private Kind kind = Kind.CASE;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    String resource = kind == Kind.CASE ? CaseSchema.RESOURCE : SiteSchema.RESOURCE;
    try (InputStream in = CaseSchema.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("built without its schema");
      }
      out.print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    out.flush();
    return ExitCodes.DONE;
  }
}
