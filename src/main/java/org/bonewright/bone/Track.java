package org.bonewright.bone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;

/**
 * The track of a plate screw in the bone.
 *
 * @param screw which screw, as operation, implant and hole
 * @param distance mm along the axis from the middle of the zone
 * @param direction direction of the near cortex; the far cortex lies half a turn away
 * @param diameter thread diameter in mm
 */
public record Track(
    String screw, Dimension distance, Optional<Direction> direction, Dimension diameter) {

  /** Whether a new screw bites into bone that an old track has already taken. */
  public enum Overlap {
    /** The two certainly keep clear of each other in both cortices. */
    CLEAR,
    /** They may meet, as far as the case file tells. */
    POSSIBLE
  }

  private static final Dimension BOLT = Dimension.assumed(2, 6, "bolts and pins to 6 mm");

  /** Return whether this is the track of a screw in a plate. */
  public boolean ofPlateScrew() {
    return screw.contains(" hole ");
  }

  /** Return whether every bolt, pin and lag screw of these operations has a level. */
  public static boolean othersAreTold(List<Operation> operations) {
    return operations.stream()
        .flatMap(operation -> operation.fixation().stream())
        .flatMap(List::stream)
        .allMatch(Track::isTold);
  }

  private static boolean isTold(Implant implant) {
    if (implant instanceof Nail nail) {
      return nail.bolts()
          .map(all -> all.stream().allMatch(b -> b.atMm().isPresent()))
          .orElse(false);
    }
    if (implant instanceof ExternalFixator fixator) {
      return fixator.pins().isPresent();
    }
    return !(implant instanceof LagScrew lag) || lag.atMm().isPresent() || lag.hole().isPresent();
  }

  /**
   * Return the tracks of every screw, bolt and pin of these operations whose place can be told.
   * Bolts and pins need the level of the zone; where it is not known they are taken to lie
   * anywhere.
   */
  public static List<Track> of(List<Operation> operations, FractureZone zone) {
    List<Track> tracks = new ArrayList<>();
    for (Operation operation : operations) {
      operation.fixation().stream()
          .flatMap(List::stream)
          .forEach(implant -> tracks.addAll(others(operation.id(), implant, zone)));
    }
    for (Operation operation : operations) {
      operation.fixation().stream()
          .flatMap(List::stream)
          .filter(Plate.class::isInstance)
          .map(Plate.class::cast)
          .forEach(
              plate -> {
                PlacedPlate placed = new PlacedPlate(plate, zone);
                plate.screws().stream()
                    .flatMap(List::stream)
                    .flatMap(row -> row.at().stream())
                    .forEach(hole -> of(operation.id(), placed, hole).ifPresent(tracks::add));
              });
    }
    return List.copyOf(tracks);
  }

  private static List<Track> others(String operation, Implant implant, FractureZone zone) {
    String name = operation + "/" + implant.id();
    if (implant instanceof Nail nail) {
      return nail.bolts().stream()
          .flatMap(List::stream)
          .flatMap(b -> b.atMm().stream().map(at -> at(name, at, b.plane(), b.diameterMm(), zone)))
          .toList();
    }
    if (implant instanceof ExternalFixator fixator) {
      return fixator.pins().stream()
          .flatMap(List::stream)
          .map(pin -> at(name, pin.atMm(), pin.direction(), pin.diameterMm(), zone))
          .toList();
    }
    return implant instanceof LagScrew lag
        ? lag.atMm().stream()
            .map(at -> at(name, at, lag.direction(), lag.diameterMm(), zone))
            .toList()
        : List.of();
  }

  private static Track at(
      String name,
      Quantity level,
      Optional<Direction> direction,
      Optional<Quantity> diameter,
      FractureZone zone) {
    Dimension distance =
        zone.centre()
            .map(centre -> Dimension.stated(level, "level stated").minus(centre))
            .orElse(Dimension.assumed(-600, 600, "level of the zone not known"));
    return new Track(
        name,
        distance,
        direction,
        diameter.map(q -> Dimension.stated(q, "diameter stated")).orElse(BOLT));
  }

  /** Return the track of the screw in one hole of a placed plate, where both can be told. */
  public static Optional<Track> of(String operation, PlacedPlate placed, int hole) {
    return placed
        .distance(hole)
        .flatMap(
            distance ->
                diameter(placed, hole)
                    .map(
                        diameter ->
                            new Track(
                                operation + "/" + placed.plate().id() + " hole " + hole,
                                distance,
                                placed.plate().surface(),
                                diameter)));
  }

  private static Optional<Dimension> diameter(PlacedPlate placed, int hole) {
    return placed
        .screwIn(hole)
        .flatMap(ScrewRow::diameterMm)
        .map(q -> Dimension.stated(q, "screw diameter stated"))
        .or(
            () ->
                placed
                    .size()
                    .map(s -> Dimension.assumed(s.screw(), s.screw(), "usual screw of the plate")));
  }

  /**
   * Return whether this track certainly keeps clear of an older one.
   *
   * <p>Both run straight through the axis. On the outer surface the middles of their openings lie
   * {@code √(Δz² + (2R·sin(Δφ/2))²)} mm apart in a straight line, Δz along the axis, Δφ around it;
   * for the opposite cortex likewise. They keep clear when that exceeds the sum of the two radii at
   * both cortices, for every place that the two may have.
   *
   * @param older a track of an earlier operation
   * @param outer outer diameter of the bone in mm
   */
  public Overlap against(Track older, Dimension outer) {
    double reach = (diameter.max() + older.diameter.max()) / 2;
    double along = leastBetween(distance, older.distance);
    if (along > reach) {
      return Overlap.CLEAR;
    }
    if (direction.isEmpty() || older.direction.isEmpty()) {
      return Overlap.POSSIBLE;
    }
    double turn = direction.get().angleTo(older.direction.get());
    double nearest = Math.min(turn, 180 - turn);
    double around = Math.sin(Math.toRadians(nearest) / 2) * outer.min();
    return Math.hypot(along, around) > reach ? Overlap.CLEAR : Overlap.POSSIBLE;
  }

  private static double leastBetween(Dimension a, Dimension b) {
    return Math.max(0, Math.max(a.min() - b.max(), b.min() - a.max()));
  }
}
