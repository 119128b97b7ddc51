package org.bonewright.measures.setting;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the bone holds an implant that is no part of this history. */
final class OtherImplantThere implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "other-implant",
        "An implant of another history in the bone",
        Definition.yesOrNo(),
        "yes where the file names one, else no",
        List.of("bone/otherImplants"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return scene.subject().caseFile().bone().otherImplants().isEmpty()
        ? Reading.word("no", "none named")
        : Reading.word("yes", "named in the file");
  }
}
