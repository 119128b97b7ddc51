package org.bonewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.bonewright.bench.BenchSchema;
import org.bonewright.casefile.reading.CaseSchema;
import org.bonewright.site.SiteSchema;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the schema of case files, of site files, or of bench files. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description =
        "Prints the JSON Schema (draft 2020-12) of case files, of site files, or of bench files.",
    footerHeading = "%n",
    footer = {
      "Examples:",
      "  bonewright schema > case.schema.json",
      "  bonewright schema site > site.schema.json",
      "  bonewright schema bench > bench.schema.json"
    })
final class SchemaCommand implements Callable<Integer> {

  /** The kinds of file. */
  enum Kind {
    CASE(CaseSchema.RESOURCE),
    SITE(SiteSchema.RESOURCE),
    BENCH(BenchSchema.RESOURCE);

    private final String resource;

    Kind(String resource) {
      this.resource = resource;
    }
  }

  @Parameters(
      arity = "0..1",
      paramLabel = "case|site|bench",
      description = "The kind of file: case (the default), site or bench.")
  private Kind kind = Kind.CASE;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    try (InputStream in = CaseSchema.class.getResourceAsStream(kind.resource)) {
      if (in == null) {
        throw new IllegalStateException("built without its schema");
      }
      out.print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    out.flush();
    return ExitCodes.DONE;
  }
}
