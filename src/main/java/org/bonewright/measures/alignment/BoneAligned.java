package org.bonewright.measures.alignment;

import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Which bone is held to unite as it stands, if any. */
final class BoneAligned implements Measure {

  private static final String NONE = "none";

  @Override
  public Definition definition() {
    return new Definition(
        "bone-held-to-unite",
        "Bone held to unite",
        Definition.words("humerus", "femur", "tibia", "radius", "ulna", "clavicle", NONE),
        "the bone, where a plate, nail or fixator holds it at the end and it is meant to unite so;"
            + " else none",
        List.of("bone/name", "main-implant-used", "meant-to-unite"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    String bone = Words.written(scene.boneName());
    if (scene.certainly("main-implant-used", "no")) {
      return Reading.word(NONE, "nothing holds the bone");
    }
    if (scene.certainly("meant-to-unite", "no")) {
      return Reading.word(NONE, "not meant to unite so");
    }
    if (scene.certainly("main-implant-used", "yes") && scene.certainly("meant-to-unite", "yes")) {
      return Reading.word(bone, "held, and meant to unite");
    }
    return Reading.words(
        Set.of(bone, NONE),
        Kind.FACT,
        "whether the bone is held to unite is not told",
        Reading.missingOf(scene.read("main-implant-used"), scene.read("meant-to-unite"))
            .toArray(MissingFact[]::new));
  }
}
