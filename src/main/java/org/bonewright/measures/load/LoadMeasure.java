package org.bonewright.measures.load;

import java.util.List;
import java.util.stream.Collectors;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How hard the bone is pressed together, bent or twisted in the first time after the operation. */
final class LoadMeasure implements Measure {

  /** Which of the three. */
  enum What {
    PRESSING("load-pressing", "Force that presses the bone together", "N", "N"),
    BENDING("load-bending", "Bending moment at the fracture", "N.m", "N·m"),
    TORSION("load-torsion", "Torsion at the fracture", "N.m", "N·m");

    private final String id;
    private final String title;
    private final String unit;
    private final String shownUnit;

    What(String id, String title, String unit, String shownUnit) {
      this.id = id;
      this.title = title;
      this.unit = unit;
      this.shownUnit = shownUnit;
    }

    private Dimension of(LoadRange load) {
      return switch (this) {
        case PRESSING -> load.pressN();
        case BENDING -> load.bendingNm();
        case TORSION -> load.torsionNm();
      };
    }
  }

  private final What what;
  private final PermittedLoads permitted;

  LoadMeasure(What what, UsualLoads usual) {
    this.what = what;
    this.permitted = new PermittedLoads(usual);
  }

  @Override
  public Definition definition() {
    return new Definition(
        what.id,
        what.title,
        new Definition.Domain.Numbers(what.unit, what.shownUnit, 0, Double.POSITIVE_INFINITY, 0),
        "as the case states, else from the table of usual loads, for the body weight; under the"
            + " highest load limit of the first six weeks: a leg in proportion, an arm from light use at 2 kg to full use at"
            + " 20 kg; no limit planned: full use; not told in the past: anything between; the"
            + " largest of the activities",
        List.of(
            LoadMeasures.STATED,
            "bone/name",
            "patient/weightKg",
            "operations/aftercare/load",
            "operations/aftercare/followed"),
        "each load names its own; the scaling by a load limit is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<LoadRange> loads = permitted.of(scene);
    List<Dimension> spans = loads.stream().map(what::of).toList();
    double min = spans.stream().mapToDouble(Dimension::min).max().orElseThrow();
    double max = spans.stream().mapToDouble(Dimension::max).max().orElseThrow();
    List<MissingFact> missing = min == max ? List.of() : permitted.missing(scene);
    return new Reading.Amount(
        min,
        max,
        spans.stream().anyMatch(Dimension::assumed) ? Kind.ASSUMED : Kind.FACT,
        loads.stream().map(LoadMeasure::inWords).collect(Collectors.joining(" ")),
        missing);
  }

  private static String inWords(LoadRange load) {
    return load.activity() + ": " + load.basis() + ". " + load.source();
  }
}
