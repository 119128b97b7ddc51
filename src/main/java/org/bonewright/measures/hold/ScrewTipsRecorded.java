package org.bonewright.measures.hold;

import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the file tells where the tip of any plate screw lies. */
final class ScrewTipsRecorded implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "screw-tips-recorded",
        "Screw tips recorded",
        Definition.yesOrNo(),
        "yes when for at least one plate screw meant for both cortices the file gives its tip, or its"
            + " length with the measured width of the bone on both sides of it",
        List.of(
            "operations/fixation/screws/tipBeyondMm",
            "operations/fixation/screws/lengthMm",
            "bone/sections"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    long told = ScrewTip.all(scene).stream().filter(screw -> screw.beyond().isPresent()).count();
    return told > 0
        ? Reading.words(Set.of("yes"), Kind.RECORD, "recorded for " + told + " plate screws")
        : Reading.words(Set.of("no"), Kind.RECORD, "recorded for no plate screw");
  }
}
