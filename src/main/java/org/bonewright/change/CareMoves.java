package org.bonewright.change;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import tools.jackson.databind.node.ObjectNode;

/** Moves that put in no metal: samples, graft, reduction, compression, load. */
final class CareMoves {

  /** Deep samples in a revision; the card on samples asks for them. */
  static final int SAMPLES = 5;

  /** Days of culture; the card on samples asks for them. */
  static final int CULTURE_DAYS = 14;

  private static final int SIX_WEEKS = 42;
  private static final int TWELVE_WEEKS = 84;

  private CareMoves() {}

  /** Five deep samples and one for histology, cultured for two weeks. */
  static Stream<Edit> samples(ObjectNode stage) {
    return Stream.of(
        Edit.of(
            stage,
            "five deep samples, cultured for 14 days, and one for histology",
            changed ->
                changed
                    .withObjectProperty("samples")
                    .put("deepSamples", SAMPLES)
                    .put("histology", "yes")
                    .put("cultureDays", CULTURE_DAYS)));
  }

  /** Graft from the pelvis. */
  static Stream<Edit> graft(ObjectNode stage) {
    return Stream.of(
        Edit.of(
            stage,
            "20 mL of cancellous graft from the pelvis",
            changed ->
                changed
                    .withArrayProperty("biology")
                    .addObject()
                    .put("kind", "autograft-cancellous")
                    .put("volumeMl", 20)));
  }

  /** No graft. */
  static Stream<Edit> noGraft(ObjectNode stage) {
    return stage.path("biology").isEmpty()
        ? Stream.empty()
        : Stream.of(Edit.of(stage, "no graft", changed -> changed.putArray("biology")));
  }

  /** The gap closed all round. */
  static Stream<Edit> closed(ObjectNode stage) {
    return Stream.of(
        Edit.of(
            stage,
            "the gap closed all round (an aim, to be seen on the films at the end)",
            changed ->
                changed
                    .withObjectProperty("reduction")
                    .put("gapNearMm", 0)
                    .put("gapFarMm", 0)
                    .put("contactPercent", 100)));
  }

  /** The plate bent beforehand. */
  static Stream<Edit> prebent(ObjectNode stage) {
    return stage.path("compression").isObject()
        ? Stream.of(
            Edit.of(
                stage,
                "the plate bent beforehand",
                changed -> changed.withObjectProperty("compression").put("prebent", "yes")))
        : Stream.empty();
  }

  /** Absolute or relative stability named as the aim. */
  static Stream<Edit> concept(ObjectNode stage) {
    return Stream.of("absolute", "relative")
        .filter(concept -> !stage.path("concept").asString("").equals(concept))
        .map(
            concept ->
                Edit.of(
                    stage,
                    concept + " stability as the aim",
                    changed -> changed.put("concept", concept)));
  }

  /** Less of the bone stripped. */
  static Stream<Edit> lessStripped(ObjectNode stage) {
    return IntStream.of(25, 10)
        .filter(percent -> StageParts.number(stage.path("strippedPercent")) > percent)
        .mapToObj(
            percent ->
                Edit.of(
                    stage,
                    "at most " + percent + " % of the circumference stripped",
                    changed -> changed.put("strippedPercent", percent)));
  }

  /**
   * A load limit for six, then for twelve weeks: of 20, 15 or 10 kg, of an arm 5, 2 or 1 kg. Where
   * the plan has a lower one already, that stays.
   */
  static Stream<Edit> load(ObjectNode stage, Setting setting) {
    return IntStream.of(SIX_WEEKS, TWELVE_WEEKS)
        .boxed()
        .flatMap(
            days ->
                (setting.isArm() ? IntStream.of(5, 2, 1) : IntStream.of(20, 15, 10))
                    .mapToObj(
                        kg ->
                            Edit.of(
                                stage,
                                "load limited to "
                                    + kg
                                    + " kg for "
                                    + days / 7
                                    + " weeks, or less where the plan says less",
                                changed -> new LoadLimits(changed).lower(days, kg))));
  }

  /** Bone ends cut back to bleeding bone. */
  static Stream<Edit> endsCutBack(ObjectNode stage) {
    return Stream.of(
        Edit.of(
            stage,
            "both ends cut back to bleeding bone",
            changed -> changed.withObjectProperty("endsPrepared").put("toBleedingBone", "yes")));
  }

  /** The canal opened on both sides. */
  static Stream<Edit> canalOpened(ObjectNode stage) {
    return Stream.of(
        Edit.of(
            stage,
            "the canal opened on both sides",
            changed -> changed.withObjectProperty("endsPrepared").put("canalOpened", "yes")));
  }

  /** No angle and no rotation left. */
  static Stream<Edit> straight(ObjectNode stage) {
    return Stream.of(
        Edit.of(
            stage,
            "the bone set straight, without angle or rotation (an aim, to be seen on the films at the end)",
            changed ->
                changed
                    .withObjectProperty("reduction")
                    .put("coronalDeg", 0)
                    .put("sagittalDeg", 0)
                    .put("rotationDeg", 0)));
  }

  /** Compression before the first locking screw. */
  static Stream<Edit> pressedFirst(ObjectNode stage) {
    return stage.path("compression").isObject()
        ? Stream.of(
            Edit.of(
                stage,
                "the line pressed before the first locking screw",
                changed -> changed.withObjectProperty("compression").put("beforeLocking", "yes")))
        : Stream.empty();
  }
}
