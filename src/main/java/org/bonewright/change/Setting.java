package org.bonewright.change;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.bonewright.casefile.BoneName;
import org.bonewright.shelf.Shelf;
import tools.jackson.databind.JsonNode;

/**
 * What a drawn plan has to fit: the bone as the file tells it, and the implants that are kept. What
 * the file does not tell is not guessed here; then nothing that would need it is drawn.
 *
 * @param root the case file
 * @param shelf the implants that are kept
 */
record Setting(JsonNode root, Shelf shelf) {

  private static final Set<BoneName> ARM =
      EnumSet.of(BoneName.CLAVICLE, BoneName.HUMERUS, BoneName.RADIUS, BoneName.ULNA);

  /** Return the bone, where its name is one that is known. */
  Optional<BoneName> bone() {
    return FileWords.constant(BoneName.class, root.path("bone").path("name"));
  }

  /** Return whether it is a bone of the arm. */
  boolean isArm() {
    return bone().filter(ARM::contains).isPresent();
  }

  /** Return the length of the bone in mm. */
  OptionalDouble lengthMm() {
    return told(root.path("bone").path("lengthMm"));
  }

  /** Return the near end of the zone in mm. */
  OptionalDouble zoneFromMm() {
    return told(root.path("injury").path("zone").path("fromMm"));
  }

  /** Return the far end of the zone in mm. */
  OptionalDouble zoneToMm() {
    return told(root.path("injury").path("zone").path("toMm"));
  }

  /** Return the middle of the zone in mm. */
  OptionalDouble zoneMiddleMm() {
    return zoneFromMm().isPresent() && zoneToMm().isPresent()
        ? OptionalDouble.of((zoneFromMm().getAsDouble() + zoneToMm().getAsDouble()) / 2)
        : OptionalDouble.empty();
  }

  /** Return the angle of the line in degrees; 0 is straight across. */
  OptionalDouble obliquityDeg() {
    return told(root.path("injury").path("obliquityDeg"));
  }

  /** Return the narrowest canal that was measured, in mm. */
  OptionalDouble narrowestCanalMm() {
    return canals().min();
  }

  /** Return the canal in mm at the measured level next to this one. */
  OptionalDouble canalMm(double level) {
    return StageParts.each(root.path("bone").path("sections"))
        .filter(section -> section.has("canalMm"))
        .min(
            (a, b) ->
                Double.compare(
                    Math.abs(StageParts.number(a.path("atMm")) - level),
                    Math.abs(StageParts.number(b.path("atMm")) - level)))
        .map(section -> OptionalDouble.of(StageParts.number(section.path("canalMm"))))
        .orElse(OptionalDouble.empty());
  }

  private DoubleStream canals() {
    return StageParts.each(root.path("bone").path("sections"))
        .filter(section -> section.has("canalMm"))
        .mapToDouble(section -> StageParts.number(section.path("canalMm")));
  }

  private static OptionalDouble told(JsonNode quantity) {
    return quantity.isNumber() || quantity.isObject()
        ? OptionalDouble.of(StageParts.number(quantity))
        : OptionalDouble.empty();
  }
}
