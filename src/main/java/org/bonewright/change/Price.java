package org.bonewright.change;

import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a plan costs the patient, all stages together. Of two plans that leave as much open the
 * cheaper one has fewer implants, then less exposure, less graft, fewer holes, less nail, sooner
 * full load; the order is a convention of this project.
 *
 * @param implants plates, nails, lag screws and struts that are put in
 * @param exposedMm length in mm of bone laid open for plates: of each stage the sum of its plates,
 *     of which a plate without a length counts by its holes; none where a stage is closed
 * @param graftMl graft in mL, of any kind
 * @param holes holes drilled in bone for plate screws, lag screws, bolts
 * @param nailMm length of nails in mm
 * @param strippedPercent the most of the circumference that a stage strips; empty where none says
 * @param limitedDays last day of a load limit of any stage; 0 where there is none
 */
public record Price(
    int implants,
    double exposedMm,
    double graftMl,
    int holes,
    double nailMm,
    OptionalDouble strippedPercent,
    double limitedDays)
    implements Comparable<Price> {

  private static final String CLOSED = "closed";

  private static final Comparator<Price> CHEAPER =
      Comparator.comparingInt(Price::implants)
          .thenComparingDouble(Price::exposedMm)
          .thenComparingDouble(Price::graftMl)
          .thenComparingInt(Price::holes)
          .thenComparingDouble(Price::nailMm)
          .thenComparingDouble(price -> price.strippedPercent().orElse(0))
          .thenComparingDouble(Price::limitedDays);

  @Override
  public int compareTo(Price other) {
    return CHEAPER.compare(this, other);
  }

  /** Return the price of a plan as it is drawn. */
  static Price of(ObjectNode plan) {
    JsonNode stages = plan.path("stages");
    return new Price(
        over(stages, Price::implantsOf),
        StageParts.each(stages).mapToDouble(Price::exposed).sum(),
        StageParts.each(stages)
            .flatMap(stage -> StageParts.each(stage.path("biology")))
            .mapToDouble(graft -> StageParts.number(graft.path("volumeMl")))
            .sum(),
        over(stages, Price::holesOf),
        ofKind(stages, "nail").mapToDouble(n -> StageParts.number(n.path("lengthMm"))).sum(),
        StageParts.each(stages)
            .filter(stage -> stage.has("strippedPercent"))
            .mapToDouble(stage -> StageParts.number(stage.path("strippedPercent")))
            .max(),
        StageParts.each(stages)
            .flatMap(stage -> StageParts.each(stage.path("aftercare").path("load")))
            .mapToDouble(step -> StageParts.number(step.path("untilDay")))
            .max()
            .orElse(0));
  }

  private interface Counted {
    int of(JsonNode implant);
  }

  private static int over(JsonNode stages, Counted counted) {
    return StageParts.each(stages)
        .flatMap(stage -> StageParts.each(stage.path("fixation")))
        .mapToInt(counted::of)
        .sum();
  }

  private static Stream<JsonNode> ofKind(JsonNode stages, String kind) {
    return StageParts.each(stages)
        .flatMap(stage -> StageParts.each(stage.path("fixation")))
        .filter(implant -> kind(implant).equals(kind));
  }

  private static String kind(JsonNode implant) {
    return implant.path("kind").asString("");
  }

  private static int implantsOf(JsonNode implant) {
    return kind(implant).equals("cerclage") ? 0 : 1;
  }

  private static double exposed(JsonNode stage) {
    if (stage.path("approach").asString("").equals(CLOSED)) {
      return 0;
    }
    return StageParts.each(stage.path("fixation"))
        .filter(implant -> kind(implant).equals("plate"))
        .mapToDouble(Plates::lengthMm)
        .sum();
  }

  private static int holesOf(JsonNode implant) {
    return switch (kind(implant)) {
      case "plate" ->
          StageParts.each(implant.path("screws"))
              .filter(row -> !row.path("track").asString("").equals("old-hole"))
              .mapToInt(row -> row.path("at").size())
              .sum();
      case "nail" -> implant.path("bolts").size();
      case "external-fixator" -> implant.path("pins").size();
      case "lag-screw" -> 1;
      default -> 0;
    };
  }
}
