package org.bonewright.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Words;
import org.bonewright.shelf.PlateSizes;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Moves that put in a plate from the shelf. */
final class PlateChoices {

  private static final String PLATE = "plate";

  /** From weak to strong; from memory, as the usual dimensions have it. */
  private static final List<Plate.Family> WEAK_TO_STRONG =
      List.of(
          Plate.Family.ONE_THIRD_TUBULAR,
          Plate.Family.SEMI_TUBULAR,
          Plate.Family.SHAFT_STRENGTH_2_7,
          Plate.Family.RECONSTRUCTION,
          Plate.Family.SMALL_FRAGMENT,
          Plate.Family.SMALL_FRAGMENT_LOCKING,
          Plate.Family.LARGE_FRAGMENT_NARROW,
          Plate.Family.LARGE_FRAGMENT_NARROW_LOCKING,
          Plate.Family.LARGE_FRAGMENT_BROAD,
          Plate.Family.LARGE_FRAGMENT_BROAD_LOCKING);

  private PlateChoices() {}

  /** The next stronger sizes of the shelf, at least as long, on the same surface. */
  static Stream<Edit> stronger(ObjectNode stage, Setting setting) {
    return StageParts.implants(stage, PLATE)
        .boxed()
        .flatMap(
            i -> {
              ObjectNode plate = StageParts.implant(stage, i);
              return Plates.family(plate).stream()
                  .flatMap(family -> strongerThan(family).stream())
                  .flatMap(family -> setting.shelf().plates(family).stream())
                  .flatMap(sizes -> asLong(sizes, plate).stream())
                  .map(fresh -> inPlace(stage, i, fresh, setting));
            });
  }

  private static List<Plate.Family> strongerThan(Plate.Family family) {
    return WEAK_TO_STRONG.subList(WEAK_TO_STRONG.indexOf(family) + 1, WEAK_TO_STRONG.size());
  }

  private static Optional<FreshPlate> asLong(PlateSizes sizes, ObjectNode plate) {
    double wanted = Plates.lengthMm(plate);
    return sizes.holes().stream()
        .sorted()
        .filter(holes -> wanted > 0 && holes * sizes.family().spacingMm() >= wanted)
        .findFirst()
        .filter(holes -> plate.has("surface"))
        .map(holes -> new FreshPlate(sizes, holes, plate.path("surface"), locks(sizes, plate)));
  }

  /** Return whether new screws lock: where the plate can, and those of the old one do. */
  private static boolean locks(PlateSizes sizes, ObjectNode old) {
    return Plates.locks(sizes.family())
        && StageParts.rows(old).stream()
            .anyMatch(row -> row.path("type").asString("").equals("locking"));
  }

  private static Edit inPlace(ObjectNode stage, int index, FreshPlate fresh, Setting setting) {
    ObjectNode old = StageParts.implant(stage, index);
    return Edit.of(
        stage,
        "instead of " + StageParts.name(old) + ", stronger: " + fresh.inWords(),
        changed -> {
          StageParts.forgetCrossed(changed);
          ((ArrayNode) changed.path("fixation"))
              .set(index, fresh.drawn(StageParts.name(old), line(old, stage, setting)));
        });
  }

  /** Return the level of the line: as the old plate has it, else as injured if none is cut out. */
  private static OptionalDouble line(ObjectNode old, ObjectNode stage, Setting setting) {
    OptionalDouble told = Plates.lineMm(old);
    return told.isPresent() || !stage.path("resection").isEmpty() ? told : setting.zoneMiddleMm();
  }

  /** A second plate at a right angle to the only one, its ends at least a hole short of it. */
  static Stream<Edit> second(ObjectNode stage, Setting setting) {
    int[] plates = StageParts.implants(stage, PLATE).toArray();
    if (plates.length != 1) {
      return Stream.empty();
    }
    ObjectNode first = StageParts.implant(stage, plates[0]);
    OptionalDouble degrees = degrees(first.path("surface"));
    if (degrees.isEmpty() || Plates.lengthMm(first) == 0) {
      return Stream.empty();
    }
    return companions(first, setting)
        .flatMap(
            sizes ->
                shorter(sizes, Plates.lengthMm(first) - 2 * Plates.spacingMm(first)).stream()
                    .flatMap(
                        holes ->
                            Stream.of(90, -90)
                                .map(turn -> surface(degrees.getAsDouble() + turn))
                                .map(s -> new FreshPlate(sizes, holes, s, locks(sizes, first)))))
        .map(
            fresh ->
                Edit.of(
                    stage,
                    "a second plate at a right angle: " + fresh.inWords(),
                    changed ->
                        ((ArrayNode) changed.path("fixation"))
                            .add(
                                fresh.drawn(
                                    StageParts.freeName(stage, PLATE),
                                    line(first, stage, setting)))));
  }

  /** Return the sizes for a second plate: small ones before the size of the first. */
  private static Stream<PlateSizes> companions(ObjectNode first, Setting setting) {
    List<Plate.Family> families = new ArrayList<>();
    boolean locking = Plates.family(first).filter(Plates::locks).isPresent();
    families.add(locking ? Plate.Family.SMALL_FRAGMENT_LOCKING : Plate.Family.SMALL_FRAGMENT);
    Plates.family(first).ifPresent(families::add);
    return families.stream().distinct().flatMap(family -> setting.shelf().plates(family).stream());
  }

  private static List<Integer> shorter(PlateSizes sizes, double longest) {
    return sizes.holes().stream()
        .filter(holes -> holes >= 4 && holes * sizes.family().spacingMm() <= longest)
        .sorted(Comparator.reverseOrder())
        .limit(2)
        .toList();
  }

  private static OptionalDouble degrees(JsonNode surface) {
    return surface.isNumber()
        ? OptionalDouble.of(surface.asDouble())
        : FileWords.constant(Direction.Named.class, surface)
            .map(named -> OptionalDouble.of(named.direction().degrees()))
            .orElse(OptionalDouble.empty());
  }

  /** Return a direction as a file writes it, within one turn. */
  private static JsonNode surface(double degrees) {
    double turned = (degrees % 360 + 360) % 360;
    for (Direction.Named named : Direction.Named.values()) {
      if (named.direction().degrees() == turned) {
        return JsonNodeFactory.instance.stringNode(Words.written(named));
      }
    }
    return JsonNodeFactory.instance.numberNode(turned);
  }

  /** The plate turned round the bone by an eighth, then by a quarter of a turn. */
  static Stream<Edit> turned(ObjectNode stage) {
    return StageParts.implants(stage, PLATE)
        .boxed()
        .flatMap(
            i -> {
              ObjectNode plate = StageParts.implant(stage, i);
              OptionalDouble degrees = degrees(plate.path("surface"));
              return degrees.isEmpty()
                  ? Stream.empty()
                  : Stream.of(45, -45, 90, -90)
                      .map(turn -> surface(degrees.getAsDouble() + turn))
                      .map(
                          to ->
                              Edit.of(
                                  stage,
                                  i,
                                  StageParts.name(plate)
                                      + " on the "
                                      + Plates.surface(to)
                                      + " surface",
                                  changed -> changed.set("surface", to)));
            });
  }

  /** Return whether a number of holes may be had of the plate's own size. */
  static boolean isKept(ObjectNode plate, int holes, Setting setting) {
    return Plates.family(plate)
        .flatMap(setting.shelf()::plates)
        .filter(sizes -> sizes.holes().contains(holes))
        .isPresent();
  }

  /** Return the indices of the holes between the screws next to the line that are open. */
  static IntStream openOverLine(ObjectNode plate) {
    int zone = plate.path("place").path("zoneBetweenHoles").path(0).asInt(0);
    Integer near = StageParts.used(plate).floor(zone);
    Integer far = StageParts.used(plate).higher(zone);
    return near == null || far == null
        ? IntStream.empty()
        : StageParts.free(plate).stream()
            .mapToInt(Integer::intValue)
            .filter(hole -> hole > near && hole < far);
  }
}
