package org.bonewright.measures.alignment;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How much shorter the bone is, where it is not shortened on purpose. */
final class LengthLost implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "length-lost",
        "Length lost",
        Definition.signedMillimetres(),
        "shortening in all; none where bone is cut out and the gap closed on purpose, which is"
            + " judged by itself",
        List.of("shortening-total", "resection-closed"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Reading total = scene.read("shortening-total");
    if (scene.certainly("resection-closed", "yes")) {
      return new Reading.None("shortened on purpose");
    }
    if (scene.certainly("resection-closed", "no") || !(total instanceof Reading.Amount amount)) {
      return total;
    }
    return Reading.number(
        new Dimension(Math.min(0, amount.min()), Math.max(0, amount.max()), false, ""),
        amount.working() + ", on purpose or not",
        Reading.missingOf(total, scene.read("resection-closed")).toArray(MissingFact[]::new));
  }
}
