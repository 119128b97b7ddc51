package org.bonewright.change;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.bonewright.casefile.BoneName;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Moves that lay a plate usual for the bone where none was drawn. */
final class NewPlates {

  private static final String PLATE = "plate";
  private static final String NAIL = "nail";
  private static final String FIXATOR = "external-fixator";
  private static final String FIXATION = "fixation";
  private static final String COMPRESSION = "compression";
  private static final int LONGEST_OVER_NAIL = 12;

  private NewPlates() {}

  /** Instead of the nail, the line pressed. */
  static Stream<Edit> insteadOfNail(ObjectNode stage, Setting setting) {
    OptionalInt nail = StageParts.implants(stage, NAIL).findFirst();
    return nail.isEmpty()
        ? Stream.empty()
        : UsualPlate.of(setting).stream()
            .flatMap(usual -> usual.kept(setting, false))
            .map(fresh -> instead(stage, nail.getAsInt(), fresh, setting));
  }

  private static Edit instead(ObjectNode stage, int nail, FreshPlate fresh, Setting setting) {
    String press = setting.shelf().tensionDevice() ? "tension-device" : "eccentric-screws";
    return Edit.of(
        stage,
        "instead of the nail: "
            + fresh.inWords()
            + ", bent beforehand and pressed by "
            + press.replace('-', ' '),
        changed -> {
          ((ArrayNode) changed.path(FIXATION)).set(nail, laid(stage, fresh, setting));
          open(changed, fresh);
          changed
              .put("concept", "absolute")
              .putObject(COMPRESSION)
              .put("method", press)
              .put("prebent", "yes")
              .put("beforeLocking", "yes");
        });
  }

  /** Beside lag screws that hold the bone alone: a plate that carries bending and torsion. */
  static Stream<Edit> overLagScrew(ObjectNode stage, Setting setting) {
    boolean alone =
        StageParts.implants(stage, "lag-screw").findAny().isPresent()
            && has(stage, PLATE, NAIL, FIXATOR).isEmpty();
    return alone
        ? UsualPlate.of(setting).stream()
            .flatMap(usual -> usual.kept(setting, false))
            .map(
                fresh ->
                    Edit.of(
                        stage,
                        "a plate that protects the lag screw: " + fresh.inWords(),
                        changed -> {
                          add(changed, laid(stage, fresh, setting));
                          open(changed, fresh);
                        }))
        : Stream.empty();
  }

  /**
   * Over the nail that holds the bone and stays with its bolts; instead of another nail, where the
   * stage puts one in. Nothing is pressed: a locked nail keeps the ends apart. Beside the nail
   * there is seldom room for a screw through both cortices, so that screws lock in the near one;
   * then both are tried.
   */
  static Stream<Edit> overNail(ObjectNode stage, Setting setting) {
    boolean room =
        has(stage, PLATE, FIXATOR).isEmpty()
            && stage.path(FIXATION).isArray()
            && setting.bone().filter(NewPlates::isNailed).isPresent();
    return room
        ? BeforePlan.of(setting.root()).flatMap(BeforePlan::nail).stream()
            .flatMap(
                nail ->
                    UsualPlate.of(setting).stream()
                        .flatMap(usual -> usual.kept(setting, true))
                        .filter(fresh -> fresh.holes() <= LONGEST_OVER_NAIL)
                        .flatMap(
                            fresh ->
                                Stream.of(1, 2)
                                    .map(cortices -> over(stage, nail, fresh, cortices, setting))))
        : Stream.empty();
  }

  private static boolean isNailed(BoneName bone) {
    return bone == BoneName.FEMUR || bone == BoneName.TIBIA || bone == BoneName.HUMERUS;
  }

  private static Edit over(
      ObjectNode stage, String nail, FreshPlate fresh, int cortices, Setting setting) {
    return Edit.of(
        stage,
        nail
            + " left in with its bolts, and over it: "
            + fresh.inWords()
            + ", its screws locked "
            + (cortices == 1
                ? "in the near cortex, beside the nail"
                : "in both cortices, past the nail (check that there is room)"),
        changed -> {
          spare(changed, nail);
          ObjectNode plate = laid(stage, fresh, setting);
          ((ObjectNode) plate.path("screws").get(0)).put("cortices", cortices);
          add(changed, plate);
          open(changed, fresh);
          changed.put("concept", "relative").putObject(COMPRESSION).put("method", "none");
        });
  }

  /** Let a nail stay whole: nothing of it is taken out, and no other nail goes in. */
  private static void spare(ObjectNode stage, String nail) {
    keepOnly(stage, "removed", "of", nail);
    keepOnly(stage, FIXATION, "kind", NAIL);
    if (stage.path("infectionCare").path("implants").asString("").equals("exchanged")) {
      stage.withObjectProperty("infectionCare").put("implants", "kept");
    }
  }

  /**
   * Drop from an array what has this word in a field; an array that was not there is empty then.
   */
  private static void keepOnly(ObjectNode stage, String array, String field, String dropped) {
    JsonNode before = stage.path(array);
    ArrayNode kept = stage.arrayNode();
    StageParts.each(before)
        .filter(each -> !each.path(field).asString("").equals(dropped))
        .forEach(kept::add);
    stage.set(array, kept);
  }

  private static Optional<String> has(ObjectNode stage, String... kinds) {
    return Stream.of(kinds)
        .filter(kind -> StageParts.implants(stage, kind).findAny().isPresent())
        .findFirst();
  }

  private static ObjectNode laid(ObjectNode stage, FreshPlate fresh, Setting setting) {
    return fresh.drawn(
        StageParts.freeName(stage, PLATE),
        stage.path("resection").isEmpty() ? setting.zoneMiddleMm() : OptionalDouble.empty());
  }

  private static void add(ObjectNode stage, ObjectNode plate) {
    ((ArrayNode) stage.path(FIXATION)).add(plate);
  }

  /** An open approach on the side of the plate. */
  private static void open(ObjectNode stage, FreshPlate fresh) {
    StageParts.forgetCrossed(stage);
    stage.put("approach", fresh.surface().asString("lateral"));
    if (StageParts.number(stage.path("strippedPercent")) < UsualPlate.STRIPPED) {
      stage.put("strippedPercent", UsualPlate.STRIPPED);
    }
  }
}
