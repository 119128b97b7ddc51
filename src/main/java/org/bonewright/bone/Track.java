package org.bonewright.bone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
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

  /** Return the tracks of every plate screw of these operations whose place can be told. */
  public static List<Track> of(List<Operation> operations, FractureZone zone) {
    List<Track> tracks = new ArrayList<>();
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
