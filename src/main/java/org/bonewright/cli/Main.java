package org.bonewright.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.bonewright.review.Engine;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command {@code bonewright}. */
@Command(
    name = "bonewright",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    subcommands = {
      ReviewCommand.class,
      ExplainCommand.class,
      ImproveCommand.class,
      CheckCommand.class,
      DrawCommand.class,
      BoneCommand.class,
      PrinciplesCommand.class,
      SiteCommand.class,
      MechanicsCommand.class,
      HandbookCommand.class,
      SchemaCommand.class,
      ServeCommand.class,
      WarmUpCommand.class
    },
    description =
        "Reviews fixations of a broken long bone that failed or did not unite, and the plan for the"
            + " next operation, against named principles.",
    footer = {
      "",
      "Examples:",
      "  bonewright review case.json              the review, as text",
      "  bonewright explain case.json plate-span-ratio --on op-2   why one verdict is what it is",
      "  bonewright improve case.json             how else the plan could be drawn",
      "  bonewright check case.json --todo        what the file still lacks",
      "  bonewright principles plate-span-ratio   one principle with its sources",
      "  bonewright serve                         the same over HTTP",
      "",
      "Decision support, not a decision: it does not replace clinical judgement, imaging,",
      "local protocols or licensed practice."
    })
public final class Main implements Runnable {

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  /** Run a command and leave with its exit code. */
  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int code = ExitCodes.INTERNAL;
    try {
      code = run(args, out, err);
    } catch (StackOverflowError | OutOfMemoryError fault) {
      err.println("Bonewright itself is at fault; nothing was reviewed: " + fault);
    }
    out.flush();
    System.exit(code);
  }

  /** Run a command; the answer goes to {@code out}, what went wrong to {@code err}. */
  static int run(String[] args, PrintStream out, PrintStream err) {
    return new CommandLine(new Main())
        .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
        .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(Faults::wrongArguments)
        .setExecutionExceptionHandler(Faults::failed)
        .execute(args);
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  /** Says the version. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"Bonewright " + Engine.VERSION};
    }
  }
}
