package org.bonewright.measures.alignment;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The length lost as a share of the bone. */
final class LengthLostShare implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "length-lost-share",
        "Share of the length lost",
        Definition.percent(),
        "length lost divided by the length of the bone",
        List.of("length-lost", "bone/lengthMm"),
        "arithmetic");
  }

  @Override
  public Reading take(Scene scene) {
    Reading lost = scene.read("length-lost");
    if (!(lost instanceof Reading.Amount amount)) {
      return lost;
    }
    Dimension bone = scene.bone().length();
    Dimension share =
        new Dimension(
            Math.min(100, 100 * Math.max(0, amount.min()) / bone.max()),
            Math.min(100, 100 * Math.max(0, amount.max()) / bone.min()),
            bone.assumed() && amount.max() > 0,
            "");
    List<MissingFact> missing = new ArrayList<>(lost.missing());
    if (bone.min() < bone.max()) {
      missing.add(scene.missingInCase("bone/lengthMm", "How long is the bone, in mm?"));
    }
    return Reading.number(
        share,
        amount.shown() + " mm of " + bone.numbers() + " mm",
        missing.toArray(MissingFact[]::new));
  }
}
