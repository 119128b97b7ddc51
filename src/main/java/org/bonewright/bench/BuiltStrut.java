package org.bonewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bench.BenchFile.Construct;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.OnlayStrut;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;

/** Builds the strut of a bench file, in the canal or on the surface, or says what does not fit. */
final class BuiltStrut {

  private final Construct file;
  private final BenchStrut strut;

  BuiltStrut(Construct file, BenchStrut strut) {
    this.file = file;
    this.strut = strut;
  }

  /**
   * Return everything that does not fit.
   *
   * @param plates the plates of the file
   */
  List<Problem> problems(List<BenchPlate> plates) {
    List<Problem> problems = new ArrayList<>();
    boolean round = strut.outerDiameter().isPresent() || strut.innerDiameter().isPresent();
    if (round && strut.onlay()) {
      problems.add(
          Problem.error(
              "/strut",
              "diameters and a width, an azimuth or wires",
              "diameters in the canal, or width, thickness and azimuth on the surface"));
    } else if (strut.onlay()) {
      onlay(plates, problems);
    } else {
      inside(problems);
    }
    return problems;
  }

  private void inside(List<Problem> problems) {
    needed(problems, "outerDiameter", strut.outerDiameter());
    needed(problems, "innerDiameter", strut.innerDiameter());
    if (strut.innerDiameter().orElse(0.0) >= strut.outerDiameter().orElse(Double.MAX_VALUE)) {
      problems.add(
          Problem.error(
              "/strut/innerDiameter",
              "the number " + strut.innerDiameter().orElse(0.0),
              "less than the outer diameter"));
    }
  }

  private void onlay(List<BenchPlate> plates, List<Problem> problems) {
    needed(problems, "width", strut.width());
    needed(problems, "thickness", strut.thickness());
    needed(problems, "azimuth", strut.azimuth());
    for (int i = 0; i < strut.wires().size(); i++) {
      double at = strut.wires().get(i);
      if (!BuiltScrews.inBone(file, at) || at < strut.from() || at > strut.to()) {
        problems.add(
            Problem.error(
                "/strut/wires/" + i, "the number " + at, "a level of the strut, outside the gap"));
      }
    }
    if (problems.isEmpty()) {
      OnlayStrut lying = surface();
      boolean covered =
          plates.stream().anyMatch(p -> lying.apart(p.azimuth().orElse(0.0)) < OnlayStrut.OPPOSITE);
      if (covered) {
        problems.add(
            Problem.error(
                "/strut/azimuth",
                "the number " + strut.azimuth().orElse(0.0),
                "a side at least " + (int) OnlayStrut.OPPOSITE + " degrees from every plate"));
      }
    }
  }

  private static void needed(List<Problem> problems, String field, Optional<Double> value) {
    if (value.isEmpty()) {
      problems.add(Problem.error("/strut/" + field, "nothing", "a number"));
    }
  }

  /** Return the strut in the canal, which fits; empty where it lies on the surface. */
  Optional<BoneStrut> canal() {
    return strut.onlay()
        ? Optional.empty()
        : Optional.of(
            new BoneStrut(
                material(),
                new HollowCircle(
                    strut.outerDiameter().orElseThrow(), strut.innerDiameter().orElseThrow()),
                strut.from(),
                strut.to()));
  }

  /** Return the strut on the surface, which fits; empty where it lies in the canal. */
  Optional<OnlayStrut> lying() {
    return strut.onlay() ? Optional.of(surface()) : Optional.empty();
  }

  private OnlayStrut surface() {
    return new OnlayStrut(
        material(),
        new Rectangle(strut.width().orElseThrow(), strut.thickness().orElseThrow()),
        strut.azimuth().orElseThrow(),
        strut.from(),
        strut.to(),
        strut.wires(),
        List.of());
  }

  private Material material() {
    return Material.isotropic(strut.young(), strut.poisson());
  }
}
