package org.bonewright.bench;

import java.util.Locale;
import java.util.stream.Collectors;
import org.bonewright.bench.BenchAnswer.AnsweredLoad;
import org.bonewright.bench.BenchAnswer.OfConstruct;
import org.bonewright.bench.BenchAnswer.OfQuestion;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.model.Outcome;

/** Shows an answer as text: moments in N·m, turns in degrees. */
public final class BenchText {

  private final BenchLines lines = new BenchLines();

  private BenchText() {}

  /** Return the answer as text that ends with a line feed. */
  public static String of(BenchAnswer answer) {
    BenchText made = new BenchText();
    if (answer instanceof OfConstruct construct) {
      made.construct(construct);
    } else if (answer instanceof OfQuestion question) {
      question.parts().forEach(part -> made.part(part, ""));
    }
    return made.lines.text();
  }

  private void part(BenchAnswer.Part part, String indent) {
    if (part instanceof BenchAnswer.Figure one) {
      lines.add("%s%-22s %s %s", indent, one.name(), shown(one.value()), one.unit());
    } else if (part instanceof BenchAnswer.Flag flag) {
      lines.add("%s%-22s %s", indent, flag.name(), flag.value() ? "yes" : "no");
    } else if (part instanceof BenchAnswer.Row row) {
      String values = row.values().stream().map(BenchText::shown).collect(Collectors.joining("  "));
      lines.add("%s%-22s %s %s", indent, row.name(), values, row.unit());
    } else if (part instanceof BenchAnswer.Group group) {
      lines.add("%s%s", indent, group.name());
      group.parts().forEach(below -> part(below, indent + "  "));
    }
  }

  private static String shown(double value) {
    double size = Math.abs(value);
    String format = size == 0 || size >= 100 ? "%.0f" : size >= 1 ? "%.2f" : "%.4g";
    return String.format(Locale.ROOT, format, value);
  }

  private void construct(OfConstruct answer) {
    lines.add("STIFFNESS, end to end");
    answer
        .stiffness()
        .ifPresentOrElse(
            s -> {
              lines.add("  pressed along the bone        %8.0f N/mm", s.axial());
              lines.add("  bent, side of plate pressed   %8.2f N·m/deg", s.bendingWeakPlus());
              lines.add("  bent, side of plate pulled    %8.2f N·m/deg", s.bendingWeakMinus());
              lines.add("  bent across                   %8.2f N·m/deg", s.bendingStrong());
              lines.add("  twisted                       %8.2f N·m/deg", s.torsion());
            },
            () -> lines.add("  no answer"));
    answer
        .openingMoment()
        .ifPresent(moment -> lines.add("  far cortex opens at           %8.2f N·m", moment));
    for (AnsweredLoad load : answer.loads()) {
      lines.add("%nLOAD %s", shown(load.load()));
      if (load.outcome() instanceof Outcome.Answered found) {
        LoadText shown = new LoadText(lines);
        shown.add(found.answer());
        load.holdOut().ifPresent(shown::add);
      } else if (load.outcome() instanceof Outcome.None none) {
        lines.add("  No answer: %s", none.why());
      }
    }
    lines.add("%nWHAT THE MODEL CANNOT SAY");
    answer.limits().forEach(limit -> lines.add("  %s", limit));
  }

  private static String shown(Load load) {
    return String.format(
        Locale.ROOT,
        "along %s N, shear %s and %s N, bending about y %s and x %s N·m, torque %s N·m",
        BenchLines.plain(load.axial()),
        BenchLines.plain(load.shearX()),
        BenchLines.plain(load.shearY()),
        BenchLines.plain(load.bendingY() / 1000),
        BenchLines.plain(load.bendingX() / 1000),
        BenchLines.plain(load.torque() / 1000));
  }
}
