package org.bonewright.cli;

import java.util.concurrent.Callable;
import org.bonewright.bench.BenchAnswer;
import org.bonewright.bench.BenchJson;
import org.bonewright.bench.BenchReader;
import org.bonewright.bench.BenchText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Answers a bench file: a bare construct in, mechanics out. */
@Command(
    name = "mechanics",
    mixinStandardHelpOptions = true,
    description =
        "Answers a bench file: a bare construct, or a single question, in numbers. It knows no"
            + " patient and no principle; it is the door for checking the model and for teaching.",
    footerHeading = "%n",
    footer = {
      "A bench file is JSON. Its field kind is one of construct, intact, plateBend, plateHole,",
      "pullout, reuse, holdout, emptyHole. Units N, mm, MPa. Examples lie in cases/bench.",
      "",
      "Exit code: 0 answered, 2 the input cannot be used, 3 a fault of the program.",
      "",
      "Examples:",
      "  bonewright mechanics cases/bench/locking-plate-open-gap.json",
      "  bonewright mechanics bench.json --format json --output answer.json",
      "  bonewright mechanics bench.json --format json --timing 100",
      "  cat bench.json | bonewright mechanics -"
    })
final class MechanicsCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FILE", description = "The bench file; - is standard input.")
  private String file = "";

  @CommandLine.Mixin private FormatChoice format = new FormatChoice();

  @CommandLine.Mixin private OutputChoice output = new OutputChoice();

  @Option(
      names = "--timing",
      paramLabel = "N",
      description = "Solve so many times again and tell the middle of the times taken.")
  private @Nullable Integer timing;

  @Override
  public Integer call() throws Unusable {
    InputFile input = new InputFile(file);
    BenchReader.Outcome outcome = new BenchReader().answer(input.bytes());
    if (outcome.answer().isEmpty()) {
      throw input.unusable(
          outcome.problems(),
          "Nothing was computed. The format is told by: bonewright mechanics --help");
    }
    BenchAnswer answer = outcome.answer().get();
    output.write(format.show(() -> text(answer), () -> json(answer)));
    return ExitCodes.DONE;
  }

  private String json(BenchAnswer answer) {
    ObjectNode tree = BenchJson.tree(answer);
    if (timing != null && answer instanceof BenchAnswer.OfConstruct construct) {
      SolveTimes times = SolveTimes.of(construct, timing);
      tree.putObject("timing")
          .put("repeats", timing)
          .put("constructMs", times.constructMs())
          .put("furtherLoadMs", times.furtherLoadMs());
    }
    return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(tree) + "\n";
  }

  private String text(BenchAnswer answer) {
    String text = BenchText.of(answer);
    return timing != null && answer instanceof BenchAnswer.OfConstruct construct
        ? text + "\n" + SolveTimes.of(construct, timing).inWords()
        : text;
  }
}
