package org.bonewright.drawing.words;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Ledger;
import org.bonewright.casefile.BoneName;
import org.bonewright.measures.Scene;

/**
 * From where levels are counted: from the landmark, or, where nobody recorded a level, from the
 * middle of the zone.
 *
 * @param fromLandmark whether they are mm from the landmark
 * @param shift what the ledger's levels lack to be these; zero but where the ledger counts from the
 *     zone though the zone's own level is known
 */
public record Levels(boolean fromLandmark, Dimension shift) {

  private static final Dimension NONE = new Dimension(0, 0, false, "as read");

  /** Return how levels are told at the end of a scene's subject. */
  public static Levels of(Scene scene) {
    Ledger ledger = scene.ledger();
    Optional<Dimension> zone = scene.zone().centre();
    if (!ledger.isFromZone()) {
      return new Levels(true, NONE);
    }
    return new Levels(zone.isPresent(), zone.orElse(NONE));
  }

  /** Return a level of the ledger as it is told here. */
  public Dimension told(Dimension level) {
    return shift.equals(NONE) ? level : level.plus(shift);
  }

  /** Return from where they are counted, in words. */
  public String origin(Scene scene) {
    return fromLandmark
        ? scene
            .subject()
            .caseFile()
            .bone()
            .landmarkOffsetMm()
            .map(offset -> "the landmark used in the file")
            .orElse("the " + nearEnd(scene.boneName()))
        : "the middle of the zone, since no level is recorded";
  }

  /** Return the name of the end of the bone that levels are counted from. */
  public static String nearEnd(BoneName bone) {
    return switch (bone) {
      case HUMERUS -> "top of the head";
      case FEMUR -> "tip of the greater trochanter";
      case TIBIA -> "plateau";
      case RADIUS -> "radial head";
      case ULNA -> "tip of the olecranon";
      case CLAVICLE -> "sternal end";
    };
  }
}
