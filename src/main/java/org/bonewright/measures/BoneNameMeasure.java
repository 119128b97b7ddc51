package org.bonewright.measures;

import java.util.List;
import java.util.Locale;

/** Which bone it is. */
final class BoneNameMeasure implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "bone-name",
        "Bone",
        Definition.words("humerus", "femur", "tibia", "radius", "ulna", "clavicle"),
        "as stated",
        List.of("bone/name"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    return Reading.word(scene.boneName().name().toLowerCase(Locale.ROOT), "");
  }
}
