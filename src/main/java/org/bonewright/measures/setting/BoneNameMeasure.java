package org.bonewright.measures.setting;

import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

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
    return Reading.word(Words.written(scene.boneName()), "");
  }
}
