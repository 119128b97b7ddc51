package org.bonewright.change;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Construct;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import tools.jackson.databind.JsonNode;

/** How things stand when a plan begins: read from the file as the measures read it. */
final class BeforePlan {

  private final Scene scene;

  private BeforePlan(Scene scene) {
    this.scene = scene;
  }

  /** How far infection is known. */
  enum Infection {
    /** A sign confirms it. */
    PROVEN,
    /** It may be there, and a sign points to it or may do so. */
    IN_DOUBT,
    /** No sign points to it. */
    NO_SIGN
  }

  /** Return how things stand; nothing where the file does not fit together. */
  static Optional<BeforePlan> of(JsonNode root) {
    return new Intake()
        .read(root.toString().getBytes(StandardCharsets.UTF_8))
        .caseFile()
        .map(Subject::now)
        .map(now -> new BeforePlan(new Scene(now, EveryMeasure.catalogue())));
  }

  /** Return how far infection is known. */
  Infection infection() {
    if (scene.certainly("infection-state", "confirmed")) {
      return Infection.PROVEN;
    }
    return scene.possibly("infection-state", "confirmed")
            || scene.possibly("infection-state", "suspected")
        ? Infection.IN_DOUBT
        : Infection.NO_SIGN;
  }

  /**
   * Return the names, such as {@code op-1/nail-1}, of all metal and struts in the bone; nothing
   * where an operation does not say what it put in.
   */
  Optional<List<String>> inside() {
    Construct inside = Construct.inside(scene.subject().upToHere());
    return inside.known()
        ? Optional.of(inside.implants().stream().map(Construct.Held::path).toList())
        : Optional.empty();
  }

  /** Return the name of the nail that holds the bone, if one is certainly there and whole. */
  Optional<String> nail() {
    return scene.construct().known()
        ? scene.construct().implants().stream()
            .filter(held -> held.implant() instanceof Nail)
            .map(Construct.Held::path)
            .findFirst()
        : Optional.empty();
  }
}
