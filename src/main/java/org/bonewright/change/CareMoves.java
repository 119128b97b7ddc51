package org.bonewright.change;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Moves that put in no metal: samples, graft, reduction, compression, load. */
final class CareMoves {

  private static final int SAMPLES = 5;
  private static final int CULTURE_DAYS = 14;
  private static final int SIX_WEEKS = 42;
  private static final int TWELVE_WEEKS = 84;

  private CareMoves() {}

  /** Five deep samples and one for histology, cultured for two weeks. */
  static Stream<StageEdit> samples(ObjectNode stage) {
    return Stream.of(
        StageParts.with(
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
  static Stream<StageEdit> graft(ObjectNode stage) {
    return Stream.of(
        StageParts.with(
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
  static Stream<StageEdit> noGraft(ObjectNode stage) {
    return stage.path("biology").isEmpty()
        ? Stream.empty()
        : Stream.of(StageParts.with(stage, "no graft", changed -> changed.putArray("biology")));
  }

  /** The gap closed all round. */
  static Stream<StageEdit> closed(ObjectNode stage) {
    return Stream.of(
        StageParts.with(
            stage,
            "the gap closed all round",
            changed ->
                changed
                    .withObjectProperty("reduction")
                    .put("gapNearMm", 0)
                    .put("gapFarMm", 0)
                    .put("contactPercent", 100)));
  }

  /** The plate bent beforehand. */
  static Stream<StageEdit> prebent(ObjectNode stage) {
    return stage.path("compression").isObject()
        ? Stream.of(
            StageParts.with(
                stage,
                "the plate bent beforehand",
                changed -> changed.withObjectProperty("compression").put("prebent", "yes")))
        : Stream.empty();
  }

  /** Absolute or relative stability named as the aim. */
  static Stream<StageEdit> concept(ObjectNode stage) {
    return Stream.of("absolute", "relative")
        .filter(concept -> !stage.path("concept").asString("").equals(concept))
        .map(
            concept ->
                StageParts.with(
                    stage,
                    concept + " stability as the aim",
                    changed -> changed.put("concept", concept)));
  }

  /** Less of the bone stripped. */
  static Stream<StageEdit> lessStripped(ObjectNode stage) {
    return IntStream.of(25, 10)
        .filter(percent -> StageParts.number(stage.path("strippedPercent")) > percent)
        .mapToObj(
            percent ->
                StageParts.with(
                    stage,
                    "at most " + percent + " % of the circumference stripped",
                    changed -> changed.put("strippedPercent", percent)));
  }

  /** A load limit for six, then for twelve weeks, of 20, 15 or 10 kg. */
  static Stream<StageEdit> load(ObjectNode stage) {
    return IntStream.of(SIX_WEEKS, TWELVE_WEEKS)
        .boxed()
        .flatMap(
            days ->
                IntStream.of(20, 15, 10)
                    .mapToObj(
                        kg ->
                            StageParts.with(
                                stage,
                                "load limited to " + kg + " kg for " + days / 7 + " weeks",
                                changed -> limit(changed, days, kg))));
  }

  private static void limit(ObjectNode stage, int days, int kg) {
    ArrayNode load = stage.withObjectProperty("aftercare").putArray("load");
    load.addObject().put("untilDay", days).put("limitKg", kg);
  }
}
