package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.PlateSize;
import org.bonewright.bone.ThreadForm;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Pin;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;

/** Reads the tracks of one operation off its implants. */
final class TrackMaker {

  /** Share of a bolt's or pin's outer diameter that its core takes; from memory. */
  private static final double BOLT_CORE = 0.86;

  private final Operation operation;
  private final int round;
  private final FractureZone zone;
  private final BoneShape bone;

  /**
   * Make one for an operation.
   *
   * @param zone the zone after its resection, for plates placed by the holes either side of it
   */
  TrackMaker(Operation operation, int round, FractureZone zone, BoneShape bone) {
    this.operation = operation;
    this.round = round;
    this.zone = zone;
    this.bone = bone;
  }

  /** Return every track of the operation, also those whose level cannot be told. */
  List<Track> tracks() {
    List<Track> tracks = new ArrayList<>();
    for (Implant implant : operation.fixation().orElse(List.of())) {
      String path = operation.id() + "/" + implant.id();
      if (implant instanceof Plate plate) {
        tracks.addAll(screws(path, plate));
      } else if (implant instanceof Nail nail) {
        tracks.addAll(bolts(path, nail));
      } else if (implant instanceof ExternalFixator fixator) {
        tracks.addAll(pins(path, fixator));
      } else if (implant instanceof LagScrew lag) {
        tracks.add(lag(path, lag));
      }
    }
    return tracks;
  }

  private List<Track> screws(String path, Plate plate) {
    PlacedPlate placed = new PlacedPlate(plate, zone);
    List<Track> tracks = new ArrayList<>();
    for (ScrewRow row : plate.screws().orElse(List.of())) {
      for (int hole : row.at()) {
        Dimension diameter = diameter(placed, row);
        tracks.add(
            new Track(
                Track.inHole(path, hole),
                round,
                path,
                row.type() == ScrewRow.Type.LOCKING
                    ? Track.Kind.LOCKING_PLATE_SCREW
                    : Track.Kind.PLATE_SCREW,
                placed.level(hole),
                plate.surface(),
                row.tiltDeg().map(Quantity::middle).orElse(0.0),
                diameter,
                ThreadForm.of(row.type(), diameter.middle()).core(),
                reach(row),
                row.state()));
      }
    }
    return tracks;
  }

  private static Dimension diameter(PlacedPlate placed, ScrewRow row) {
    return row.diameterMm()
        .map(q -> Dimension.stated(q, "screw diameter stated"))
        .or(
            () ->
                placed
                    .size()
                    .map(s -> Dimension.assumed(s.screw(), s.screw(), "usual screw of the plate")))
        .orElseGet(
            () ->
                Dimension.assumed(
                    PlateSize.THINNEST_SCREW,
                    PlateSize.THICKEST_SCREW,
                    "plate screws of 2.7 to 6.5 mm"));
  }

  private static Track.Reach reach(ScrewRow row) {
    if (row.tipBeyondMm().map(tip -> tip.max() < 0).orElse(false)) {
      return Track.Reach.NEAR_CORTEX;
    }
    if (row.cortices().isEmpty()) {
      boolean through =
          row.tipBeyondMm().map(tip -> tip.min() >= 0).orElse(row.type() != ScrewRow.Type.LOCKING);
      return through ? Track.Reach.BOTH_CORTICES : Track.Reach.UNSURE;
    }
    Quantity crossed = row.cortices().get();
    if (crossed.max() <= 1) {
      return Track.Reach.NEAR_CORTEX;
    }
    boolean maybeShort = row.tipBeyondMm().map(tip -> tip.min() < 0).orElse(false);
    return crossed.min() > 1 && !maybeShort ? Track.Reach.BOTH_CORTICES : Track.Reach.UNSURE;
  }

  private List<Track> bolts(String path, Nail nail) {
    List<Track> tracks = new ArrayList<>();
    List<Bolt> bolts = nail.bolts().orElse(List.of());
    for (int i = 0; i < bolts.size(); i++) {
      Bolt bolt = bolts.get(i);
      Dimension diameter = diameter(bolt.diameterMm(), 3.5, 5.5, "locking bolts");
      tracks.add(
          new Track(
              Track.bolt(path, i + 1),
              round,
              path,
              Track.Kind.BOLT,
              bolt.atMm().map(at -> Dimension.stated(at, "level stated")),
              bolt.plane(),
              0,
              diameter,
              BOLT_CORE * diameter.middle(),
              Track.Reach.BOTH_CORTICES,
              bolt.state()));
    }
    return tracks;
  }

  private List<Track> pins(String path, ExternalFixator fixator) {
    List<Track> tracks = new ArrayList<>();
    List<Pin> pins = fixator.pins().orElse(List.of());
    for (int i = 0; i < pins.size(); i++) {
      Pin pin = pins.get(i);
      Dimension diameter = diameter(pin.diameterMm(), 2, 6, "pins");
      tracks.add(
          new Track(
              Track.pin(path, i + 1),
              round,
              path,
              Track.Kind.PIN,
              Optional.of(Dimension.stated(pin.atMm(), "level stated")),
              pin.direction(),
              0,
              diameter,
              BOLT_CORE * diameter.middle(),
              Track.Reach.BOTH_CORTICES,
              pin.state()));
    }
    return tracks;
  }

  private Track lag(String path, LagScrew lag) {
    Optional<PlacedPlate> through = plateOf(lag);
    Optional<Dimension> level =
        lag.atMm()
            .map(at -> Dimension.stated(at, "level stated"))
            .or(() -> through.flatMap(p -> lag.hole().flatMap(p::level)));
    Dimension diameter = diameter(lag.diameterMm(), 2.7, 4.5, "lag screws");
    return new Track(
        path,
        round,
        path,
        Track.Kind.LAG_SCREW,
        level,
        lag.direction().or(() -> through.flatMap(p -> p.plate().surface())),
        level.flatMap(entry -> lag.exitMm().map(exit -> tilt(entry, exit))).orElse(0.0),
        diameter,
        ThreadForm.of(ScrewRow.Type.CORTICAL, diameter.middle()).core(),
        Track.Reach.BOTH_CORTICES,
        Optional.empty());
  }

  private Optional<PlacedPlate> plateOf(LagScrew lag) {
    return operation.fixation().stream()
        .flatMap(List::stream)
        .filter(Plate.class::isInstance)
        .map(Plate.class::cast)
        .filter(plate -> lag.throughPlate().equals(Optional.of(plate.id())))
        .map(plate -> new PlacedPlate(plate, zone))
        .findFirst();
  }

  /** The lag screw runs from its entry to its exit, across the whole bone. */
  private double tilt(Dimension entry, Quantity exit) {
    double level = entry.middle();
    return Math.toDegrees(Math.atan2(exit.middle() - level, bone.outerAt(level).middle()));
  }

  private static Dimension diameter(
      Optional<Quantity> stated, double min, double max, String what) {
    return stated
        .map(q -> Dimension.stated(q, "diameter stated"))
        .orElse(Dimension.assumed(min, max, what + " of " + min + " to " + max + " mm"));
  }
}
