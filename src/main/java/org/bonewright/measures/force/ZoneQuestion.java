package org.bonewright.measures.force;

import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/** What is asked where it is not told at which level the line lies. */
final class ZoneQuestion {

  private ZoneQuestion() {}

  /** Return the question. */
  static MissingFact of(Scene scene) {
    return scene.missingInCase(
        "injury/zone", "From which level to which is the bone broken or not united, in mm?");
  }
}
