package org.bonewright.change;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bonewright.casefile.BoneName;
import org.bonewright.measures.Words;
import org.bonewright.shelf.NailSizes;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Moves that put in a nail, or other bolts, from the shelf. */
final class NailChoices {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final String NAIL = "nail";

  /** Reamed wider than the nail by so many mm; common practice, from memory. */
  private static final double OVER = 1.5;

  /** Of the bone's length a nail has so much at the most; our convention. */
  private static final double LONGEST_SHARE = 0.95;

  /** Bolts stand so far from the ends of the nail, in mm; from memory. */
  private static final List<Integer> FROM_END = List.of(12, 30);

  private static final List<Integer> FROM_TOP = List.of(35, 54);

  private static final Map<BoneName, String> PLANE =
      Map.of(BoneName.FEMUR, "lateral", BoneName.TIBIA, "medial", BoneName.HUMERUS, "lateral");

  private NailChoices() {}

  /**
   * A nail instead of plates and lag screws: the longest that fits, the thickest first that the
   * narrowest canal takes when reamed by 2 mm at the most.
   */
  static Stream<Edit> insteadOfPlate(ObjectNode stage, Setting setting) {
    boolean plated = StageParts.implants(stage, "plate").findAny().isPresent();
    OptionalDouble canal = setting.narrowestCanalMm();
    Optional<NailSizes> sizes = setting.bone().flatMap(setting.shelf()::nails);
    OptionalDouble length = sizes.map(s -> longest(s, setting)).orElse(OptionalDouble.empty());
    if (!plated || canal.isEmpty() || sizes.isEmpty() || length.isEmpty()) {
      return Stream.empty();
    }
    return sizes.get().outerMm().stream()
        .filter(outer -> outer + OVER <= canal.getAsDouble() + 2 + OVER)
        .sorted(Comparator.reverseOrder())
        .limit(4)
        .map(outer -> instead(stage, sizes.get(), outer, length.getAsDouble()));
  }

  private static OptionalDouble longest(NailSizes sizes, Setting setting) {
    double most = LONGEST_SHARE * setting.lengthMm().orElse(0);
    return sizes.lengthMm().stream().mapToDouble(mm -> mm).filter(mm -> mm <= most).max();
  }

  private static Edit instead(ObjectNode stage, NailSizes sizes, double outer, double length) {
    return Edit.of(
        stage,
        "instead of the plate a nail of "
            + FileWords.number(outer)
            + " × "
            + FileWords.number(length)
            + " mm, reamed, two bolts at each end, locked statically",
        changed -> {
          ArrayNode before = (ArrayNode) stage.path("fixation");
          ArrayNode fixation = changed.putArray("fixation");
          StageParts.each(before)
              .filter(implant -> !implant.path("kind").asString("").matches("plate|lag-screw"))
              .forEach(fixation::add);
          fixation.add(nail(StageParts.freeName(stage, NAIL), sizes, outer, length));
          StageParts.forgetCrossed(changed);
          changed
              .put("concept", "relative")
              .putObject("compression")
              .put("method", "nail-backslap");
        });
  }

  private static ObjectNode nail(String id, NailSizes sizes, double outer, double length) {
    ObjectNode nail =
        JSON.createObjectNode()
            .put("id", id)
            .put("kind", NAIL)
            .put("outerMm", outer)
            .put("lengthMm", length)
            .put("material", Words.written(sizes.material()))
            .put("entry", "antegrade")
            .put("reamedMm", outer + OVER)
            .put("locking", "static");
    ArrayNode bolts = nail.putArray("bolts");
    FROM_TOP.forEach(mm -> bolt(bolts, sizes, "near", mm));
    FROM_END.stream()
        .sorted(Comparator.reverseOrder())
        .forEach(mm -> bolt(bolts, sizes, "far", length - mm));
    return nail;
  }

  private static void bolt(ArrayNode bolts, NailSizes sizes, String end, double at) {
    bolts
        .addObject()
        .put("end", end)
        .put("atMm", at)
        .put("plane", PLANE.getOrDefault(sizes.bone(), "lateral"))
        .put("diameterMm", sizes.boltMm().stream().mapToDouble(mm -> mm).max().orElseThrow());
  }

  /** The next longer nails of the shelf, the far bolts moved along with its end. */
  static Stream<Edit> longer(ObjectNode stage, Setting setting) {
    double most = LONGEST_SHARE * setting.lengthMm().orElse(0);
    return ofNails(
        stage,
        setting,
        "lengthMm",
        (i, sizes) -> {
          double now = StageParts.number(StageParts.implant(stage, i).path("lengthMm"));
          return sizes.lengthMm().stream()
              .filter(mm -> mm > now && mm <= most)
              .sorted()
              .map(
                  mm ->
                      Edit.of(
                          stage,
                          i,
                          StageParts.name(StageParts.implant(stage, i))
                              + " of "
                              + FileWords.number(mm)
                              + " mm, its far bolts moved along",
                          nail -> lengthen(nail, mm - now)));
        });
  }

  private static void lengthen(ObjectNode nail, double by) {
    nail.put("lengthMm", StageParts.number(nail.path("lengthMm")) + by);
    StageParts.each(nail.path("bolts"))
        .filter(bolt -> bolt.path("end").asString("").equals("far") && bolt.has("atMm"))
        .forEach(
            bolt -> ((ObjectNode) bolt).put("atMm", StageParts.number(bolt.path("atMm")) + by));
  }

  /** The next thicker bolts of the shelf. */
  static Stream<Edit> thickerBolts(ObjectNode stage, Setting setting) {
    return ofNails(
        stage,
        setting,
        "bolts",
        (i, sizes) -> {
          ObjectNode nail = StageParts.implant(stage, i);
          double thinnest =
              StageParts.each(nail.path("bolts"))
                  .mapToDouble(bolt -> StageParts.number(bolt.path("diameterMm")))
                  .min()
                  .orElse(Double.MAX_VALUE);
          return sizes.boltMm().stream()
              .filter(mm -> mm > thinnest)
              .sorted()
              .map(
                  mm ->
                      Edit.of(
                          stage,
                          i,
                          "bolts of " + FileWords.number(mm) + " mm in " + StageParts.name(nail),
                          changed ->
                              StageParts.each(changed.path("bolts"))
                                  .filter(b -> StageParts.number(b.path("diameterMm")) < mm)
                                  .forEach(b -> ((ObjectNode) b).put("diameterMm", mm))));
        });
  }

  private interface Ways {
    Stream<Edit> of(int nail, NailSizes sizes);
  }

  private static Stream<Edit> ofNails(ObjectNode stage, Setting setting, String told, Ways ways) {
    return setting.bone().flatMap(setting.shelf()::nails).stream()
        .flatMap(
            sizes ->
                StageParts.implants(stage, NAIL)
                    .filter(i -> StageParts.implant(stage, i).has(told))
                    .boxed()
                    .flatMap(i -> ways.of(i, sizes)));
  }

  /** Return whether a diameter is kept for the bone. */
  static boolean isKept(double outer, Setting setting) {
    return setting
        .bone()
        .flatMap(setting.shelf()::nails)
        .filter(sizes -> sizes.outerMm().contains(outer))
        .isPresent();
  }
}
