package org.bonewright.bench;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.bonewright.bench.BenchAnswer.AnsweredLoad;
import org.bonewright.bench.BenchAnswer.OfConstruct;
import org.bonewright.bench.BenchAnswer.OfQuestion;
import org.bonewright.mechanics.answer.ConstructHoldOut;
import org.bonewright.mechanics.answer.FixatorAnswer;
import org.bonewright.mechanics.answer.LagDemand;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.NailAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.model.Outcome;

/** Shows an answer as text: moments in N·m, turns in degrees. */
public final class BenchText {

  /** What gave way at a smaller share than this did so before there was a load. */
  private static final double AT_ONCE = 1e-6;

  /** A zero that only rounding has given a minus. */
  private static final Pattern NO_MINUS = Pattern.compile("-(0(?:\\.0+)?)(?![.\\d])");

  private final StringBuilder text = new StringBuilder();

  private BenchText() {}

  /** Return the answer as text that ends with a line feed. */
  public static String of(BenchAnswer answer) {
    BenchText made = new BenchText();
    if (answer instanceof OfConstruct construct) {
      made.construct(construct);
    } else if (answer instanceof OfQuestion question) {
      question.parts().forEach(part -> made.part(part, ""));
    }
    return made.text.toString();
  }

  private void line(String format, Object... values) {
    String line = String.format(Locale.ROOT, format, values);
    text.append(NO_MINUS.matcher(line).replaceAll(" $1")).append('\n');
  }

  private void part(BenchAnswer.Part part, String indent) {
    if (part instanceof BenchAnswer.Figure one) {
      line("%s%-22s %s %s", indent, one.name(), shown(one.value()), one.unit());
    } else if (part instanceof BenchAnswer.Flag flag) {
      line("%s%-22s %s", indent, flag.name(), flag.value() ? "yes" : "no");
    } else if (part instanceof BenchAnswer.Row row) {
      String values = row.values().stream().map(BenchText::shown).collect(Collectors.joining("  "));
      line("%s%-22s %s %s", indent, row.name(), values, row.unit());
    } else if (part instanceof BenchAnswer.Group group) {
      line("%s%s", indent, group.name());
      group.parts().forEach(below -> part(below, indent + "  "));
    }
  }

  private static String shown(double value) {
    double size = Math.abs(value);
    String format = size == 0 || size >= 100 ? "%.0f" : size >= 1 ? "%.2f" : "%.4g";
    return String.format(Locale.ROOT, format, value);
  }

  private void construct(OfConstruct answer) {
    line("STIFFNESS, end to end");
    answer
        .stiffness()
        .ifPresentOrElse(
            s -> {
              line("  pressed along the bone        %8.0f N/mm", s.axial());
              line("  bent, side of plate pressed   %8.2f N·m/deg", s.bendingWeakPlus());
              line("  bent, side of plate pulled    %8.2f N·m/deg", s.bendingWeakMinus());
              line("  bent across                   %8.2f N·m/deg", s.bendingStrong());
              line("  twisted                       %8.2f N·m/deg", s.torsion());
            },
            () -> line("  no answer"));
    answer
        .openingMoment()
        .ifPresent(moment -> line("  far cortex opens at           %8.2f N·m", moment));
    for (AnsweredLoad load : answer.loads()) {
      line("%nLOAD %s", shown(load.load()));
      if (load.outcome() instanceof Outcome.Answered found) {
        answer(found.answer());
        load.holdOut().ifPresent(this::holdOut);
      } else if (load.outcome() instanceof Outcome.None none) {
        line("  No answer: %s", none.why());
      }
    }
    line("%nWHAT THE MODEL CANNOT SAY");
    answer.limits().forEach(limit -> line("  %s", limit));
  }

  private static String shown(Load load) {
    return String.format(
        Locale.ROOT,
        "along %s N, shear %s and %s N, bending about y %s and x %s N·m, torque %s N·m",
        plain(load.axial()),
        plain(load.shearX()),
        plain(load.shearY()),
        plain(load.bendingY() / 1000),
        plain(load.bendingX() / 1000),
        plain(load.torque() / 1000));
  }

  private static String plain(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value + 0.0)
        : String.format(Locale.ROOT, "%s", value);
  }

  private void answer(LoadAnswer answer) {
    line(
        "  distal end  %.3f %.3f %.3f mm, %.3f %.3f %.3f degrees (x, y, along)",
        answer.end().dx(),
        answer.end().dy(),
        answer.end().dz(),
        Math.toDegrees(answer.end().rx()),
        Math.toDegrees(answer.end().ry()),
        Math.toDegrees(answer.end().rz()));
    line(
        "  fracture    near %.3f, far %.3f, from %.3f to %.3f, shear %.3f mm%s%s",
        answer.gap().near(),
        answer.gap().far(),
        answer.gap().min(),
        answer.gap().max(),
        answer.gap().shear(),
        strain("; strain near ", answer.gap().nearStrain()),
        strain(", far ", answer.gap().farStrain()));
    answer
        .contact()
        .ifPresent(
            contact ->
                line(
                    "  bone ends   %s, %.0f N, %.0f %% closed",
                    contact.state(), contact.force(), 100 * contact.closed()));
    for (int i = 0; i < answer.plates().size(); i++) {
      plate(i, answer.plates().get(i));
    }
    screws(answer.screws());
    answer.nail().ifPresent(this::nail);
    answer.fixator().ifPresent(this::fixator);
    lags(answer.lags());
    answer
        .strut()
        .ifPresent(
            cut ->
                line(
                    "  strut       along %.0f N, bent %.2f N·m, torque %.2f N·m at the fracture",
                    cut.axial(),
                    Math.hypot(cut.bendingX(), cut.bendingY()) / 1000,
                    cut.torque() / 1000));
    answer
        .onlay()
        .ifPresent(
            cut ->
                line(
                    "  strut       along %.0f N, weak %.2f, strong %.2f, torque %.2f N·m, %.0f MPa at"
                        + " the fracture",
                    cut.axial(),
                    cut.weak() / 1000,
                    cut.strong() / 1000,
                    cut.torque() / 1000,
                    cut.nominal()));
    answer
        .events()
        .forEach(
            event ->
                line(
                    "  %s the %s at %s mm: %s",
                    event.load() < AT_ONCE
                        ? "while it was pressed together,"
                        : String.format(Locale.ROOT, "at %.0f %% of the load", 100 * event.load()),
                    acting(event.what()),
                    plain(event.at()),
                    event.what()));
    answer
        .slipCautious()
        .ifPresent(
            share ->
                line(
                    "  If the screw next to the fracture took all of it, it would slip at %.0f %%.",
                    100 * share));
    if (answer.reached() < 1) {
      line("  Nothing holds beyond %.0f %% of the load.", 100 * answer.reached());
    }
  }

  /** Return what does something while a load is raised. */
  private static String acting(String what) {
    return switch (what) {
      case "touches" -> "nail";
      case "loosens" -> "lag screw";
      default -> "screw";
    };
  }

  private void lags(List<LagDemand> lags) {
    if (lags.isEmpty()) {
      return;
    }
    line("  lag screws  z mm    pull N   shear N   bending MPa   holds N   margin   state");
    for (LagDemand lag : lags) {
      line(
          "  %14.1f %9.0f %9.0f %13.0f %9s %8s   %s",
          lag.at(),
          lag.tension(),
          lag.shear(),
          lag.bendingStress(),
          rounded(lag.capacity(), "%.0f"),
          rounded(lag.margin(), "%.1f"),
          lag.loose() ? "loose" : "tight");
    }
  }

  private void holdOut(ConstructHoldOut holdOut) {
    if (holdOut.loadShareAtFirst().isEmpty()) {
      line("  No screw is pulled out, even by 64 times the load.");
      return;
    }
    for (ConstructHoldOut.Pulled screw : holdOut.screws()) {
      line(
          "  pulled out  the screw at %s mm at %s times the load",
          plain(screw.at()), times(screw.loadShare()));
    }
    line(
        "  hold-out    %s%s",
        holdOut.holdOutShare().isPresent()
            ? times(holdOut.holdOutShare().getAsDouble()) + " times the load"
            : "what is left bears 64 times the load",
        holdOut.unzips() ? "; once the first is out, the next follow" : "");
  }

  private static String times(double share) {
    return String.format(Locale.ROOT, share < 10 ? "%.2f" : "%.0f", share);
  }

  private static String strain(String before, OptionalDouble percent) {
    return percent.isPresent()
        ? before + String.format(Locale.ROOT, "%.1f %%", percent.getAsDouble())
        : "";
  }

  private void plate(int index, List<PlateCut> cuts) {
    if (cuts.isEmpty()) {
      return;
    }
    line(
        "  plate %d     z mm   along N   weak N·m   strong N·m   torque N·m   MPa   at edge",
        index);
    PlateCut peak = PlateCut.peak(cuts).orElseThrow();
    for (PlateCut cut : cuts) {
      line(
          "  %-9s %7.1f %9.0f %10.2f %12.2f %12.2f %5.0f %9.0f",
          cut.equals(peak) ? "largest" : "",
          cut.z(),
          cut.axial(),
          cut.weak() / 1000,
          cut.strong() / 1000,
          cut.torque() / 1000,
          cut.nominal(),
          cut.equivalent());
    }
  }

  private void screws(List<ScrewDemand> screws) {
    if (screws.isEmpty()) {
      return;
    }
    line(
        "  screws      z mm    pull N   shear N   bending MPa   on bone MPa   holds N   margin"
            + "   state");
    for (ScrewDemand screw : screws) {
      line(
          "  %17.1f %9.0f %9.0f %13.0f %13.0f %9s %8s   %s",
          screw.at(),
          screw.pullOff(),
          screw.shear(),
          screw.bendingStress(),
          screw.bearing(),
          rounded(screw.capacity(), "%.0f"),
          rounded(screw.margin(), "%.1f"),
          screw.state());
    }
  }

  private void nail(NailAnswer nail) {
    tube("nail", nail.cuts());
    line("  bolts       z mm   shear N   bent N·m   bending MPa");
    nail.bolts()
        .forEach(
            bolt ->
                line(
                    "  %14.1f %9.0f %10.2f %13.0f",
                    bolt.at(), bolt.shear(), bolt.moment() / 1000, bolt.bendingStress()));
  }

  private void tube(String name, List<TubeCut> cuts) {
    line("  %-11s z mm   along N   bent N·m   torque N·m", name);
    cuts.forEach(
        cut ->
            line(
                "  %14.1f %9.0f %10.2f %12.2f",
                cut.z(), cut.axial(), cut.bending() / 1000, cut.torque() / 1000));
  }

  private void fixator(FixatorAnswer fixator) {
    for (int i = 0; i < fixator.bars().size(); i++) {
      tube("bar " + i, fixator.bars().get(i));
    }
    line("  pins        z mm   pull N   shear N   at bone N·m   at clamp N·m   bending MPa");
    fixator
        .pins()
        .forEach(
            pin ->
                line(
                    "  %14.1f %8.0f %9.0f %13.2f %14.2f %13.0f",
                    pin.at(),
                    pin.pull(),
                    pin.shear(),
                    pin.momentAtBone() / 1000,
                    pin.momentAtClamp() / 1000,
                    pin.bendingStress()));
  }

  private static String rounded(OptionalDouble value, String format) {
    return value.isPresent() ? String.format(Locale.ROOT, format, value.getAsDouble()) : "-";
  }
}
