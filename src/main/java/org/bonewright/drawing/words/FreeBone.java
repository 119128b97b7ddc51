package org.bonewright.drawing.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.PlateSize;
import org.bonewright.bone.ledger.Corridor;
import org.bonewright.bone.ledger.FreeCorridors;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plan;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Words;

/**
 * Where three screws of a plate, one hole apart, would find bone that no old track has touched, on
 * each surface and each side of the zone.
 *
 * @param family the plate family whose screws and spacing are tried
 * @param chosenFor why this family, in words
 * @param row the screws
 * @param corridors where they find fresh bone; empty where there is none, or where it is not known
 * @param unknown why it cannot be told, where it cannot
 */
public record FreeBone(
    Plate.Family family,
    String chosenFor,
    FreeCorridors.Row row,
    List<Corridor> corridors,
    Optional<String> unknown) {

  private static final int SCREWS = 3;

  /** A plate family and why it is the one to try. */
  private record Choice(Plate.Family family, String why) {}

  /**
   * Look for free bone in a bone as it stands, its own new screws not counted.
   *
   * @param first operations whose last plate tells the family; else that of the chosen plan does,
   *     of another plan, of an earlier operation
   */
  public static FreeBone of(Standing standing, List<Operation> first) {
    Choice choice = choice(standing, first);
    PlateSize size = PlateSize.of(choice.family());
    FreeCorridors.Row row = new FreeCorridors.Row(SCREWS, size.spacing(), size.screw());
    boolean allTold =
        standing.scene().ledger().tellsAllBefore(standing.scene().subject().before().size());
    Optional<String> unknown =
        !standing.levels().fromLandmark()
            ? Optional.of("no level is recorded")
            : allTold
                ? Optional.empty()
                : Optional.of("the file does not tell every earlier screw with its level");
    List<Corridor> corridors =
        unknown.isPresent() ? List.of() : corridors(standing, allTold, row, size);
    return new FreeBone(choice.family(), choice.why(), row, corridors, unknown);
  }

  private static List<Corridor> corridors(
      Standing standing, boolean allTold, FreeCorridors.Row row, PlateSize size) {
    List<OldTrack> older =
        standing.tracks().stream().filter(d -> !d.own()).map(Standing.Drilled::old).toList();
    FreeCorridors free = new FreeCorridors(older, allTold, standing.scene().bone(), row);
    double margin = size.screw() / 2;
    double begin = standing.nearEnd() + margin;
    double end = standing.farEnd().min() - margin;
    List<Corridor> corridors = new ArrayList<>();
    for (Direction surface : Surfaces.all()) {
      Optional<double[]> zone = zone(standing.zone());
      if (zone.isEmpty()) {
        corridors.addAll(free.on(surface, begin, end));
      } else {
        corridors.addAll(free.on(surface, begin, zone.get()[0] - margin));
        corridors.addAll(free.on(surface, zone.get()[1] + margin, end));
      }
    }
    return List.copyOf(corridors);
  }

  private static Optional<double[]> zone(FractureZone zone) {
    return zone.centre()
        .map(
            centre -> {
              double half = zone.length().map(Dimension::max).orElse(0.0) / 2;
              return new double[] {centre.min() - half, centre.max() + half};
            });
  }

  private static Choice choice(Standing standing, List<Operation> first) {
    CaseFile file = standing.scene().subject().caseFile();
    Stream<Plan> plans =
        Stream.concat(
            file.plans().stream().filter(plan -> plan.chosen().orElse(false)),
            file.plans().stream().filter(plan -> !plan.chosen().orElse(false)));
    return last(first, "")
        .or(() -> plans.flatMap(plan -> last(plan.stages(), plan.id() + "/").stream()).findFirst())
        .or(() -> last(standing.scene().subject().before(), ""))
        .orElseGet(() -> usual(standing));
  }

  private static Optional<Choice> last(List<Operation> operations, String prefix) {
    List<Choice> found = new ArrayList<>();
    for (Operation operation : operations) {
      operation.fixation().orElse(List.of()).stream()
          .filter(Plate.class::isInstance)
          .map(Plate.class::cast)
          .forEach(
              plate -> {
                String path = prefix + operation.id() + "/" + plate.id();
                plate.family().ifPresent(f -> found.add(new Choice(f, "as for " + path)));
              });
    }
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
  }

  /** No plate in the file: a usual one for the bone; from memory. */
  private static Choice usual(Standing standing) {
    Plate.Family family =
        switch (standing.scene().boneName()) {
          case FEMUR -> Plate.Family.LARGE_FRAGMENT_BROAD;
          case HUMERUS, TIBIA -> Plate.Family.LARGE_FRAGMENT_NARROW;
          case RADIUS, ULNA, CLAVICLE -> Plate.Family.SMALL_FRAGMENT;
        };
    return new Choice(family, "assumed: usual for this bone, no plate in the file");
  }

  /** Return the family's name in words. */
  public String familyName() {
    return Words.written(family);
  }

  /** Return whose screws are tried, in words. */
  public String screws() {
    return "three screws of "
        + familyName()
        + ", "
        + Dimension.number(row.diameter())
        + " mm thick and "
        + Dimension.number(row.spacing())
        + " mm apart ("
        + chosenFor
        + ")";
  }

  /** Return the corridors on one surface. */
  public List<Corridor> on(Direction surface) {
    return corridors.stream().filter(corridor -> corridor.surface().equals(surface)).toList();
  }
}
