package org.bonewright.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.measures.Words;
import org.bonewright.shelf.NailSizes;
import org.bonewright.shelf.UsualShelf;
import tools.jackson.databind.JsonNode;

/**
 * Which plates and nails of a plan a site does not keep. Of the usual sizes nothing is said: who
 * has listed none may have others.
 */
final class OffShelf {

  private OffShelf() {}

  /** Return them in words, in the order of the plan. */
  static List<String> of(PlanInFile file, Setting setting) {
    if (setting.shelf().equals(UsualShelf.shelf())) {
      return List.of();
    }
    return file.stages(file.planId()).stream()
        .flatMap(
            stage ->
                StageParts.each(file.stage(stage).path("fixation"))
                    .flatMap(implant -> missing(implant, setting))
                    .map(words -> file.stageId(stage) + ": " + words))
        .toList();
  }

  private static Stream<String> missing(JsonNode implant, Setting setting) {
    return switch (implant.path("kind").asString("")) {
      case "plate" -> plate(implant, setting).stream();
      case "nail" -> nail(implant, setting).stream();
      default -> Stream.empty();
    };
  }

  private static Optional<String> plate(JsonNode plate, Setting setting) {
    int holes = plate.path("holes").asInt(0);
    return Plates.family(plate)
        .filter(
            family -> setting.shelf().plates(family).filter(s -> has(s.holes(), holes)).isEmpty())
        .map(family -> StageParts.name(plate) + ", " + holes + "-hole " + Words.of(family));
  }

  private static boolean has(List<Integer> kept, int holes) {
    return holes == 0 || kept.contains(holes);
  }

  private static Optional<String> nail(JsonNode nail, Setting setting) {
    Optional<NailSizes> sizes = setting.bone().flatMap(setting.shelf()::nails);
    boolean kept =
        sizes
            .filter(s -> has(s.outerMm(), nail.path("outerMm")))
            .filter(s -> has(s.lengthMm(), nail.path("lengthMm")))
            .isPresent();
    return kept
        ? Optional.empty()
        : Optional.of(
            StageParts.name(nail)
                + ", nail of "
                + FileWords.number(StageParts.number(nail.path("outerMm")))
                + " × "
                + FileWords.number(StageParts.number(nail.path("lengthMm")))
                + " mm");
  }

  private static boolean has(List<Double> kept, JsonNode told) {
    return told.isMissingNode() || kept.contains(StageParts.number(told));
  }
}
