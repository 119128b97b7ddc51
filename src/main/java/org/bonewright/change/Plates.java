package org.bonewright.change;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.casefile.Plate;
import tools.jackson.databind.JsonNode;

/** Sizes of a plate as its file tells them, or as they follow from its family. */
final class Plates {

  private Plates() {}

  /** Return the family of a plate, where it is told. */
  static Optional<Plate.Family> family(JsonNode plate) {
    return FileWords.constant(Plate.Family.class, plate.path("family"));
  }

  /** Return whether the holes of a family take locking screws. */
  static boolean locks(Plate.Family family) {
    return family.name().endsWith("_LOCKING");
  }

  /** Return a surface in words. */
  static String surface(JsonNode surface) {
    return surface.isNumber()
        ? FileWords.number(surface.asDouble()) + "-degree"
        : surface.asString("").replace('-', ' ');
  }

  /** Return the level in mm of the line under a plate, where the plate tells it. */
  static OptionalDouble lineMm(JsonNode plate) {
    JsonNode place = plate.path("place");
    JsonNode between = place.path("zoneBetweenHoles");
    return place.has("firstHoleMm") && between.size() == 2 && spacingMm(plate) > 0
        ? OptionalDouble.of(
            StageParts.number(place.path("firstHoleMm"))
                + spacingMm(plate) * ((between.get(0).asInt() + between.get(1).asInt()) / 2.0 - 1))
        : OptionalDouble.empty();
  }

  /** Return the distance between neighbouring holes in mm; 0 where nothing tells it. */
  static double spacingMm(JsonNode plate) {
    if (plate.has("spacingMm")) {
      return StageParts.number(plate.path("spacingMm"));
    }
    if (plate.has("lengthMm")) {
      return Math.rint(
          StageParts.number(plate.path("lengthMm")) / Math.max(1, plate.path("holes").asInt(1)));
    }
    return family(plate).map(Plate.Family::spacingMm).orElse(0.0);
  }

  /** Return the length in mm as told, else by holes and spacing; 0 where nothing tells it. */
  static double lengthMm(JsonNode plate) {
    return plate.has("lengthMm")
        ? StageParts.number(plate.path("lengthMm"))
        : plate.path("holes").asInt(0) * spacingMm(plate);
  }
}
