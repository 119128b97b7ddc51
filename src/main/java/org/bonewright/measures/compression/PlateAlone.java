package org.bonewright.measures.compression;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a plate holds the bone without a nail beside it. */
final class PlateAlone implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "plate-alone",
        "A plate without a nail holds the bone",
        Definition.yesOrNo(),
        "yes when a plate holds the bone and no nail does",
        List.of("plate-used", "nail-used"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Reading plate = scene.read("plate-used");
    Reading nail = scene.read("nail-used");
    Set<String> possible = new HashSet<>();
    if (scene.possibly("plate-used", "yes") && scene.possibly("nail-used", "no")) {
      possible.add("yes");
    }
    if (scene.possibly("plate-used", "no") || scene.possibly("nail-used", "yes")) {
      possible.add("no");
    }
    return Reading.words(
        possible,
        Kind.FACT,
        "plate " + plate.shown() + ", nail " + nail.shown(),
        Reading.missingOf(plate, nail).toArray(MissingFact[]::new));
  }
}
