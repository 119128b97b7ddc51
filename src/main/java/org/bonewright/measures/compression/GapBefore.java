package org.bonewright.measures.compression;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Compression;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The gap that compression has to close. */
final class GapBefore implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "gap-before-compression",
        "Gap to close",
        Definition.millimetres(),
        "gap between the reduced ends before the line is compressed, as stated",
        List.of("operations/compression/gapBeforeMm", "compression-method"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("compression-method", "none")) {
      return new Reading.None("nothing compresses the line");
    }
    MissingFact missing =
        scene.missingOfFixing(
            "compression/gapBeforeMm", "How wide is the gap that compression has to close, in mm?");
    return scene
        .fixing()
        .compression()
        .flatMap(Compression::gapBeforeMm)
        .map(q -> Reading.number(Dimension.stated(q, ""), "as stated", missing))
        .orElseGet(() -> Reading.unknown(missing));
  }
}
