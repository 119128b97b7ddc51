package org.bonewright.bench;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.ConstructHoldOut;
import org.bonewright.mechanics.answer.FixatorAnswer;
import org.bonewright.mechanics.answer.LagDemand;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.NailAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.answer.TubeCut;

/** Shows what a construct does under one load as text: moments in N·m, turns in degrees. */
final class LoadText {

  /** What gave way at a smaller share than this did so before there was a load. */
  private static final double AT_ONCE = 1e-6;

  private final BenchLines lines;

  /** Prepare to add to these lines. */
  LoadText(BenchLines lines) {
    this.lines = lines;
  }

  /** Tell what the construct does. */
  void add(LoadAnswer answer) {
    lines.add(
        "  distal end  %.3f %.3f %.3f mm, %.3f %.3f %.3f degrees (x, y, along)",
        answer.end().dx(),
        answer.end().dy(),
        answer.end().dz(),
        Math.toDegrees(answer.end().rx()),
        Math.toDegrees(answer.end().ry()),
        Math.toDegrees(answer.end().rz()));
    lines.add(
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
                lines.add(
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
                lines.add(
                    "  strut       along %.0f N, bent %.2f N·m, torque %.2f N·m at the fracture",
                    cut.axial(),
                    Math.hypot(cut.bendingX(), cut.bendingY()) / 1000,
                    cut.torque() / 1000));
    answer
        .onlay()
        .ifPresent(
            cut ->
                lines.add(
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
                lines.add(
                    "  %s the %s at %s mm: %s",
                    event.load() < AT_ONCE
                        ? "while it was pressed together,"
                        : String.format(Locale.ROOT, "at %.0f %% of the load", 100 * event.load()),
                    acting(event.what()),
                    BenchLines.plain(event.at()),
                    event.what()));
    answer
        .slipCautious()
        .ifPresent(
            share ->
                lines.add(
                    "  If the screw next to the fracture took all of it, it would slip at %.0f %%.",
                    100 * share));
    if (answer.reached() < 1) {
      lines.add("  Nothing holds beyond %.0f %% of the load.", 100 * answer.reached());
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
    lines.add("  lag screws  z mm    pull N   shear N   bending MPa   holds N   margin   state");
    for (LagDemand lag : lags) {
      lines.add(
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

  /** Tell in which order its screws are pulled out as the load is raised. */
  void add(ConstructHoldOut holdOut) {
    if (holdOut.loadShareAtFirst().isEmpty()) {
      lines.add("  No screw is pulled out, even by 64 times the load.");
      return;
    }
    for (ConstructHoldOut.Pulled screw : holdOut.screws()) {
      lines.add(
          "  pulled out  the screw at %s mm at %s times the load",
          BenchLines.plain(screw.at()), times(screw.loadShare()));
    }
    lines.add(
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
    lines.add(
        "  plate %d     z mm   along N   weak N·m   strong N·m   torque N·m   MPa   at edge",
        index);
    PlateCut peak = PlateCut.peak(cuts).orElseThrow();
    for (PlateCut cut : cuts) {
      lines.add(
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
    lines.add(
        "  screws      z mm    pull N   shear N   bending MPa   on bone MPa   holds N   margin"
            + "   state");
    for (ScrewDemand screw : screws) {
      lines.add(
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
    lines.add("  bolts       z mm   shear N   bent N·m   bending MPa");
    nail.bolts()
        .forEach(
            bolt ->
                lines.add(
                    "  %14.1f %9.0f %10.2f %13.0f",
                    bolt.at(), bolt.shear(), bolt.moment() / 1000, bolt.bendingStress()));
  }

  private void tube(String name, List<TubeCut> cuts) {
    lines.add("  %-11s z mm   along N   bent N·m   torque N·m", name);
    cuts.forEach(
        cut ->
            lines.add(
                "  %14.1f %9.0f %10.2f %12.2f",
                cut.z(), cut.axial(), cut.bending() / 1000, cut.torque() / 1000));
  }

  private void fixator(FixatorAnswer fixator) {
    for (int i = 0; i < fixator.bars().size(); i++) {
      tube("bar " + i, fixator.bars().get(i));
    }
    lines.add("  pins        z mm   pull N   shear N   at bone N·m   at clamp N·m   bending MPa");
    fixator
        .pins()
        .forEach(
            pin ->
                lines.add(
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
