package org.bonewright.change;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.bonewright.casefile.Plate;
import tools.jackson.databind.JsonNode;

/** Sizes of a plate as its file tells them, or as they follow from its family. */
final class Plates {

  private Plates() {}

  /** Return the family of a plate, where it is told. */
  static Optional<Plate.Family> family(JsonNode plate) {
    String told = plate.path("family").asString("");
    return Arrays.stream(Plate.Family.values())
        .filter(family -> word(family).equals(told))
        .findFirst();
  }

  /** Return a family as a file writes it. */
  static String word(Plate.Family family) {
    return family.name().toLowerCase(Locale.ROOT).replace('_', '-').replaceAll("-2-7$", "-2-7");
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
