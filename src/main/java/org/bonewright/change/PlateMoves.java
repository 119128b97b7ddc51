package org.bonewright.change;

import java.util.List;
import java.util.NavigableSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tools.jackson.databind.node.ObjectNode;

/** Moves of the screws of plates. */
final class PlateMoves {

  private static final String PLATE = "plate";

  private PlateMoves() {}

  /**
   * One more screw in an open hole, then one on each side of the zone, then two on each side, as
   * far out and as far in as there are open holes.
   */
  static Stream<Edit> addScrew(ObjectNode stage) {
    return plates(stage)
        .boxed()
        .flatMap(
            i -> {
              ObjectNode plate = StageParts.implant(stage, i);
              int zone = plate.path("place").path("zoneBetweenHoles").path(0).asInt(0);
              return added(
                      StageParts.free(plate).stream().filter(hole -> hole <= zone).toList(),
                      StageParts.free(plate).stream().filter(hole -> hole > zone).toList())
                  .map(holes -> added(stage, i, holes));
            });
  }

  private static Stream<List<Integer>> added(List<Integer> near, List<Integer> far) {
    Stream<List<Integer>> one = Stream.concat(near.stream(), far.stream()).map(List::of);
    Stream<List<Integer>> two = near.stream().flatMap(n -> far.stream().map(f -> List.of(n, f)));
    Stream<List<Integer>> four =
        near.size() < 2 || far.size() < 2
            ? Stream.empty()
            : Stream.of(
                    List.of(
                        near.get(0), near.get(1), far.get(far.size() - 2), far.get(far.size() - 1)),
                    List.of(
                        near.get(0),
                        near.get(near.size() - 1),
                        far.get(0),
                        far.get(far.size() - 1)),
                    List.of(
                        near.get(near.size() - 2),
                        near.get(near.size() - 1),
                        far.get(0),
                        far.get(1)))
                .distinct();
    return Stream.of(one, two, four).flatMap(ways -> ways);
  }

  private static Edit added(ObjectNode stage, int index, List<Integer> holes) {
    String where = holes.stream().map(String::valueOf).collect(Collectors.joining(", "));
    return Edit.of(
        stage,
        index,
        (holes.size() == 1 ? "one more screw in hole " : "one more screw in each of holes ")
            + where
            + " of "
            + StageParts.name(StageParts.implant(stage, index)),
        plate -> holes.forEach(hole -> StageParts.addScrew(plate, hole)));
  }

  /** One screw less. */
  static Stream<Edit> fewerScrews(ObjectNode stage) {
    return plates(stage)
        .boxed()
        .flatMap(
            i -> {
              ObjectNode plate = StageParts.implant(stage, i);
              return StageParts.used(plate).stream()
                  .map(
                      hole ->
                          Edit.of(
                              stage,
                              i,
                              "no screw in hole " + hole + " of " + StageParts.name(plate),
                              changed -> StageParts.takeScrew(changed, hole)));
            });
  }

  /** A screw next to the zone moved to an open hole on its side. */
  static Stream<Edit> moveInnermost(ObjectNode stage) {
    return plates(stage)
        .boxed()
        .flatMap(
            i -> {
              ObjectNode plate = StageParts.implant(stage, i);
              int zone = plate.path("place").path("zoneBetweenHoles").path(0).asInt(0);
              NavigableSet<Integer> used = StageParts.used(plate);
              return Stream.of(used.floor(zone), used.higher(zone))
                  .filter(java.util.Objects::nonNull)
                  .flatMap(
                      from ->
                          StageParts.free(plate).stream()
                              .filter(to -> (to <= zone) == (from <= zone))
                              .map(to -> moved(stage, i, from, to)));
            });
  }

  private static Edit moved(ObjectNode stage, int index, int from, int to) {
    return Edit.of(
        stage,
        index,
        "the screw of hole "
            + from
            + " of "
            + StageParts.name(StageParts.implant(stage, index))
            + " in hole "
            + to
            + " instead",
        plate -> {
          StageParts.addScrew(plate, to);
          StageParts.takeScrew(plate, from);
        });
  }

  /** Locking screws in every hole of a locking plate. */
  static Stream<Edit> locking(ObjectNode stage) {
    return plates(stage)
        .filter(i -> StageParts.implant(stage, i).path("family").asString("").endsWith("-locking"))
        .mapToObj(
            i ->
                Edit.of(
                    stage,
                    i,
                    "locking screws in all holes used of "
                        + StageParts.name(StageParts.implant(stage, i)),
                    plate ->
                        StageParts.rows(plate)
                            .forEach(
                                row -> {
                                  row.put("type", "locking");
                                  if (StageParts.number(row.path("diameterMm")) == 4.5) {
                                    row.put("diameterMm", 5);
                                  }
                                })));
  }

  /** Every screw through both cortices. */
  static Stream<Edit> bicortical(ObjectNode stage) {
    return plates(stage)
        .mapToObj(
            i ->
                Edit.of(
                    stage,
                    i,
                    "all screws of "
                        + StageParts.name(StageParts.implant(stage, i))
                        + " through both cortices",
                    plate -> StageParts.rows(plate).forEach(row -> row.put("cortices", 2))));
  }

  /** Screws measured in their holes; then all of them longer. */
  static Stream<Edit> screwLengths(ObjectNode stage) {
    return Stream.concat(measured(stage), longerScrews(stage));
  }

  private static Stream<Edit> measured(ObjectNode stage) {
    return plates(stage)
        .mapToObj(
            i ->
                Edit.of(
                    stage,
                    i,
                    "each screw of "
                        + StageParts.name(StageParts.implant(stage, i))
                        + " measured in its hole, its tip 1 to 2 mm beyond the far cortex",
                    plate ->
                        StageParts.rows(plate).stream()
                            .filter(row -> row.path("cortices").asInt(2) == 2)
                            .forEach(PlateMoves::measure)));
  }

  private static void measure(ObjectNode row) {
    row.remove("lengthMm");
    row.putObject("tipBeyondMm").put("min", 1).put("max", 2);
  }

  private static Stream<Edit> longerScrews(ObjectNode stage) {
    return IntStream.of(2, 4, 6, 8)
        .boxed()
        .flatMap(
            by ->
                plates(stage)
                    .filter(
                        i ->
                            StageParts.rows(StageParts.implant(stage, i)).stream()
                                .anyMatch(row -> row.has("lengthMm")))
                    .mapToObj(
                        i ->
                            Edit.of(
                                stage,
                                i,
                                "all screws of "
                                    + StageParts.name(StageParts.implant(stage, i))
                                    + " longer by "
                                    + by
                                    + " mm",
                                plate -> lengthen(plate, by))));
  }

  private static void lengthen(ObjectNode plate, int by) {
    StageParts.rows(plate).stream()
        .filter(row -> row.has("lengthMm"))
        .forEach(row -> row.put("lengthMm", StageParts.number(row.path("lengthMm")) + by));
  }

  /** Return the indices of the plates whose screws are told. */
  static IntStream plates(ObjectNode stage) {
    return StageParts.implants(stage, PLATE)
        .filter(i -> !StageParts.rows(StageParts.implant(stage, i)).isEmpty());
  }
}
