package org.bonewright.measures.plate;

import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What a measure of plate screws and pins says where there is neither plate nor fixator. */
final class Holders {

  private Holders() {}

  static Reading none(Scene scene) {
    return scene.certainly("plate-used", "no") && scene.certainly("fixator-used", "no")
        ? new Reading.None("neither plate nor fixator in place")
        : new Reading.Unknown(
            Reading.missingOf(scene.read("plate-used"), scene.read("fixator-used")));
  }
}
