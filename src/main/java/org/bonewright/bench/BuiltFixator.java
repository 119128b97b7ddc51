package org.bonewright.bench;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bench.BenchFile.Construct;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.mechanics.construct.BarFixator;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/** Builds the external fixator of a bench file, or says what does not fit. */
final class BuiltFixator {

  private static final int MOST_BARS = 2;

  private final Construct file;
  private final BenchFixator fixator;

  BuiltFixator(Construct file, BenchFixator fixator) {
    this.file = file;
    this.fixator = fixator;
  }

  /** Return everything that does not fit. */
  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    List<BenchFixator.Bar> bars = fixator.bars();
    if (bars.isEmpty() || bars.size() > MOST_BARS) {
      problems.add(
          Problem.error("/fixator/bars", bars.size() + " bars", "one bar or two on one side"));
    }
    for (int i = 0; i < bars.size(); i++) {
      if (bars.get(i).innerDiameter() >= bars.get(i).outerDiameter()) {
        problems.add(
            Problem.error(
                "/fixator/bars/" + i + "/innerDiameter",
                "the number " + bars.get(i).innerDiameter(),
                "less than the outer diameter"));
      }
      if (i > 0 && bars.get(i).distance() <= bars.get(i - 1).distance()) {
        problems.add(
            Problem.error(
                "/fixator/bars/" + i + "/distance",
                "the number " + bars.get(i).distance(),
                "further from the bone than the bar before it"));
      }
    }
    pins(problems);
    return problems;
  }

  private void pins(List<Problem> problems) {
    List<Double> seen = new ArrayList<>();
    for (int i = 0; i < fixator.pins().size(); i++) {
      BenchFixator.Pins kind = fixator.pins().get(i);
      String pointer = "/fixator/pins/" + i;
      if (kind.coreDiameter() > kind.diameter()) {
        problems.add(
            Problem.error(
                pointer + "/coreDiameter",
                "the number " + kind.coreDiameter(),
                "at most the diameter of the pin"));
      }
      for (int k = 0; k < kind.at().size(); k++) {
        double at = kind.at().get(k);
        String place = pointer + "/at/" + k;
        if (!BuiltScrews.inBone(file, at)) {
          problems.add(
              Problem.error(
                  place, "a pin at " + at, "levels within the fragments, outside the gap"));
        }
        if (seen.contains(at)) {
          problems.add(Problem.error(place, "two pins at " + at, "one pin at each level"));
        }
        seen.add(at);
      }
    }
  }

  /** Return the fixator, which fits. */
  BarFixator fixator() {
    List<BarFixator.Pin> pins = new ArrayList<>();
    for (BenchFixator.Pins kind : fixator.pins()) {
      Material material = Material.isotropic(kind.young(), kind.poisson());
      boolean rigid = kind.rigid().orElse(false);
      kind.at()
          .forEach(
              at ->
                  pins.add(
                      new BarFixator.Pin(
                          at, material, kind.diameter(), kind.coreDiameter(), rigid)));
    }
    return new BarFixator(
        fixator.azimuth().orElse(0.0),
        fixator.bars().stream().map(BuiltFixator::bar).toList(),
        pins);
  }

  private static BarFixator.Bar bar(BenchFixator.Bar bar) {
    return new BarFixator.Bar(
        Material.isotropic(bar.young(), bar.poisson()),
        new HollowCircle(bar.outerDiameter(), bar.innerDiameter()),
        bar.distance());
  }
}
