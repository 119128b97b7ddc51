package org.bonewright.cli;

import java.util.concurrent.Callable;
import org.bonewright.drawing.Drawing;
import org.bonewright.drawing.SvgWriter;
import org.bonewright.drawing.View;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Draws one operation or plan of a case. */
@Command(
    name = "draw",
    mixinStandardHelpOptions = true,
    description =
        "Draws the bone at the end of an operation or plan, to scale, as SVG: from the side, or its"
            + " surface unrolled with every track.",
    footerHeading = "%n",
    footer = {
      "Exit code: 0 drawn, 2 the input cannot be used, 3 a fault of the program.",
      "",
      "Examples:",
      "  bonewright draw case.json --output plan.svg",
      "  bonewright draw case.json --on op-3 --view map --output op-3.svg",
      "  cat case.json | bonewright draw - > plan.svg"
    })
final class DrawCommand implements Callable<Integer> {

  @CommandLine.Mixin private CaseChoice cases = new CaseChoice();

  @Option(
      names = "--on",
      paramLabel = "ID",
      description =
          "Operation, plan or stage to draw: op-3, plan-a, plan-a/stage-1. Else the chosen plan, or"
              + " the last operation.")
  private @Nullable String on;

  @Option(
      names = "--view",
      paramLabel = "strip|map",
      description = "From the side: strip (the default); or the surface unrolled: map.")
  private View view = View.STRIP;

  @CommandLine.Mixin private OutputChoice output = new OutputChoice();

  @Override
  public Integer call() throws Unusable {
    CaseInput input = cases.read();
    SubjectChoice choice = new SubjectChoice(input.caseFile());
    Subject subject = on == null ? choice.usual() : choice.named(on);
    cases.warn(input);
    String svg = SvgWriter.write(Drawing.of(new Scene(subject, EveryMeasure.catalogue()), view));
    output.write(svg);
    return ExitCodes.DONE;
  }
}
