package org.bonewright.measures.alignment;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The step between the ends as a share of the width of the bone. */
final class StepShare implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "step-share",
        "Step between the ends",
        new Definition.Domain.Numbers("%", "%", 0, Double.POSITIVE_INFINITY, 0),
        "step at the line divided by the width of the bone at the zone",
        List.of("step-at-line", "outer-at-zone"),
        "arithmetic");
  }

  @Override
  public Reading take(Scene scene) {
    Reading step = scene.read("step-at-line");
    Reading width = scene.read("outer-at-zone");
    if (!(step instanceof Reading.Amount ends)) {
      return step;
    }
    if (!(width instanceof Reading.Amount bone)) {
      return width;
    }
    Dimension share =
        new Dimension(
            100 * ends.min() / bone.max(),
            100 * ends.max() / bone.min(),
            bone.kind() == Kind.ASSUMED && ends.max() > 0,
            "");
    return Reading.number(
        share,
        ends.shown() + " mm of " + bone.shown() + " mm",
        Reading.missingOf(step, width).toArray(MissingFact[]::new));
  }
}
