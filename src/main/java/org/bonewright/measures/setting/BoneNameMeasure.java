package org.bonewright.measures.setting;

import java.util.List;
import java.util.Locale;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

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
