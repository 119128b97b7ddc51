package org.bonewright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.reading.Reading;
import org.bonewright.drawing.words.BoneJson;
import org.bonewright.drawing.words.BoneText;
import org.bonewright.drawing.words.FreeBone;
import org.bonewright.drawing.words.Standing;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what is in the bone. */
@Command(
    name = "bone",
    mixinStandardHelpOptions = true,
    description =
        "Says what an operation finds in the bone: metal, every old track with its level and"
            + " surface, and where a plate's screws would meet fresh bone.",
    footerHeading = "%n",
    footer = {
      "Exit code: 0 told, 2 the input cannot be used, 3 a fault of the program.",
      "",
      "Examples:",
      "  bonewright bone case.json                  as it is now, after the last operation",
      "  bonewright bone case.json --before op-3    as op-3 found it",
      "  bonewright bone case.json --format json --output bone.json"
    })
final class BoneCommand implements Callable<Integer> {

  /** How the account is shown. */
  enum Format {
    TEXT,
    JSON
  }

  /** Reads a format as help writes it. */
  static final class FormatReader implements CommandLine.ITypeConverter<Format> {
    @Override
    public Format convert(String word) {
      return switch (word.toLowerCase(Locale.ROOT)) {
        case "text" -> Format.TEXT;
        case "json" -> Format.JSON;
        default ->
            throw new CommandLine.TypeConversionException(
                "expected text or json, but was '" + word + "'");
      };
    }
  }

  @Parameters(paramLabel = "CASE", description = "The case file; - is standard input.")
  private String file = "";

  @Option(
      names = "--before",
      paramLabel = "ID",
      description = "As this operation, plan or stage finds it. Else after the last operation.")
  private @Nullable String before;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      converter = FormatReader.class,
      description = "How to show it: text (the default) or json.")
  private Format format = Format.TEXT;

  @Option(names = "--output", paramLabel = "FILE", description = "Write to this file.")
  private @Nullable String output;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @Override
  public Integer call() throws Unusable {
    Reading reading = new CaseInput(file).read();
    CaseFile caseFile = CaseInput.caseFile(reading);
    Optional<Subject> named =
        before == null ? Optional.empty() : Optional.of(new SubjectChoice(caseFile).named(before));
    Subject moment = named.map(Subject::justBefore).orElseGet(() -> Subject.now(caseFile));
    List<Operation> coming = named.map(Subject::steps).orElse(List.of());
    PrintWriter err = spec.commandLine().getErr();
    err.print(CaseInput.warnings(reading));
    err.flush();
    Standing standing = new Standing(new Scene(moment, EveryMeasure.catalogue()));
    FreeBone free = FreeBone.of(standing, coming);
    String told =
        format == Format.JSON ? BoneJson.render(standing, free) : BoneText.render(standing, free);
    new Output(Optional.ofNullable(output), spec.commandLine().getOut()).write(told);
    return ExitCodes.DONE;
  }
}
