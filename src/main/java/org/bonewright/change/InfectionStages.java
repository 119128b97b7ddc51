package org.bonewright.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A plan that goes into proven infection in one sitting, drawn in two stages: first all metal out,
 * excision, samples, dead space, cover and drugs, with a fixator meanwhile; weeks later the stage
 * as it was drawn. It is drawn only where infection is proven, all metal in the bone is known, the
 * one stage brings a plate and no nail (the pins of a fixator before a nail are a risk of their
 * own), and pins find room on thigh or shin. What is cut out, how skin is closed and which drugs
 * are given the team decides; here it is only named, as the cards ask for it.
 */
final class InfectionStages {

  /** Its name in the cards. */
  static final String MOVE = "infection-plan";

  private static final String STAGES = "stages";
  private static final String REMOVED = "removed";
  private static final String CARE = "infectionCare";
  private static final String FIRST = "debridement";

  /** Four to eight weeks: as the cards on membrane and on the parts of such a plan have it. */
  private static final int EARLIEST = 28;

  private static final int LATEST = 56;

  /** Weeks of drugs; as the card on the parts of such a plan has it. */
  private static final int FEWEST_WEEKS = 6;

  private static final int MOST_WEEKS = 12;

  /** What the leg may bear on the fixator in kg; our choice, no source. */
  private static final int LIMIT_KG = 10;

  /** What lies in the wound between the stages; a graft of the plan waits for the second. */
  private static final Set<String> NO_GRAFT = Set.of("spacer", "membrane", "decortication");

  private InfectionStages() {}

  /** Two stages instead of one. */
  static Stream<Edit> edits(ObjectNode plan, Setting setting) {
    Optional<ObjectNode> stage = onlyStage(plan);
    return stage.stream()
        .flatMap(drawn -> metal(drawn, setting).stream())
        .flatMap(
            metal ->
                TemporaryFixator.ways(setting, surface(stage.orElseThrow()))
                    .map(
                        fixator ->
                            Edit.of(plan, words(fixator), p -> part(p, metal.isEmpty(), fixator))));
  }

  private static Optional<ObjectNode> onlyStage(ObjectNode plan) {
    JsonNode stages = plan.path(STAGES);
    return stages.size() == 1 && stages.get(0) instanceof ObjectNode stage && isOnePlate(stage)
        ? Optional.of(stage)
        : Optional.empty();
  }

  private static boolean isOnePlate(ObjectNode stage) {
    boolean other =
        Stream.of("nail", "external-fixator")
            .anyMatch(kind -> StageParts.implants(stage, kind).findAny().isPresent());
    boolean staged =
        StageParts.each(stage.path("biology"))
            .anyMatch(graft -> NO_GRAFT.contains(graft.path("kind").asString("")));
    return StageParts.implants(stage, "plate").findAny().isPresent()
        && !other
        && !staged
        && !stage.has("transport")
        && !stage.path("id").asString("").equals(FIRST);
  }

  /** Return all metal in the bone, where infection is proven and it can be told. */
  private static Optional<List<String>> metal(ObjectNode stage, Setting setting) {
    return BeforePlan.of(setting.root())
        .filter(before -> before.infection() == BeforePlan.Infection.PROVEN)
        .flatMap(BeforePlan::inside)
        .filter(metal -> isAllTakenWhole(stage, metal));
  }

  /** A stage that lets metal stay, or takes out only part of it, is another plan. */
  private static boolean isAllTakenWhole(ObjectNode stage, List<String> metal) {
    List<JsonNode> removed = StageParts.each(stage.path(REMOVED)).toList();
    return removed.stream()
            .allMatch(
                each ->
                    Stream.of("holes", "bolts", "pins").allMatch(part -> each.path(part).isEmpty()))
        && removed.stream().map(each -> each.path("of").asString("")).toList().containsAll(metal);
  }

  private static String surface(ObjectNode stage) {
    return StageParts.implants(stage, "plate")
        .mapToObj(i -> StageParts.implant(stage, i).path("surface").asString(""))
        .findFirst()
        .orElse("");
  }

  private static String words(TemporaryFixator fixator) {
    return "two stages. First all metal out, infected and dead tissue cut out, five deep samples"
        + " and histology, dead space and cover seen to, antibiotics by culture for "
        + FEWEST_WEEKS
        + " to "
        + MOST_WEEKS
        + " weeks, with the infection team; "
        + fixator.inWords()
        + ", holds the bone. The stage as drawn follows after "
        + EARLIEST
        + " to "
        + LATEST
        + " days, if wound, markers and cultures allow it";
  }

  private static void part(ObjectNode plan, boolean noMetal, TemporaryFixator fixator) {
    ObjectNode second = (ObjectNode) plan.path(STAGES).get(0);
    ObjectNode first = first(second, noMetal, fixator);
    List<JsonNode> both = new ArrayList<>(List.of(first, second));
    later(second, first);
    both.forEach(plan.putArray(STAGES)::add);
  }

  private static ObjectNode first(ObjectNode drawn, boolean noMetal, TemporaryFixator fixator) {
    ObjectNode first = drawn.objectNode();
    first.put("id", FIRST).put("title", "Metal out, excision, samples, a fixator for a time");
    first.put("concept", "relative");
    Stream.of("approach", "skinBridgeMm")
        .filter(drawn::has)
        .forEach(field -> first.set(field, drawn.path(field)));
    first.putArray("fixation").add(fixator.drawn("fixator-1"));
    first.putArray("resection");
    ArrayNode between = first.putArray("biology");
    if (!drawn.path("biology").isEmpty()) {
      between.addObject().put("kind", "spacer");
    }
    first
        .putObject("samples")
        .put("deepSamples", CareMoves.SAMPLES)
        .put("histology", "yes")
        .put("cultureDays", CareMoves.CULTURE_DAYS);
    ObjectNode care = first.putObject(CARE);
    care.put(FIRST, "yes").put("implants", noMetal ? "none-there" : "removed");
    care.put("deadSpace", "yes").put("softTissueCover", "yes");
    care.putObject("antibioticWeeks").put("min", FEWEST_WEEKS).put("max", MOST_WEEKS);
    care.put("team", "yes");
    first.set(REMOVED, drawn.path(REMOVED).isArray() ? drawn.path(REMOVED) : drawn.arrayNode());
    ObjectNode aftercare = first.putObject("aftercare");
    aftercare.putArray("load").addObject().put("untilDay", LATEST).put("limitKg", LIMIT_KG);
    aftercare.putArray("visitsWeeks").add(2).add(4).add(6);
    return first;
  }

  /** The stage as it was drawn, but that only the fixator is left to be taken out. */
  private static void later(ObjectNode second, ObjectNode first) {
    ObjectNode interval = second.putObject("daysAfterStageBefore");
    interval.put("min", EARLIEST).put("max", LATEST);
    second
        .putArray(REMOVED)
        .addObject()
        .put("of", FIRST + "/" + first.at("/fixation/0/id").asString(""));
    if (second.path(CARE) instanceof ObjectNode care) {
      care.remove("implants");
      if (care.isEmpty()) {
        second.remove(CARE);
      }
    }
  }
}
