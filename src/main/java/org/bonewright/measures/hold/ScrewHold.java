package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.bone.Track;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/**
 * What the plate screws on one side of the zone hold.
 *
 * <p>A screw earns one credit for each cortex that its thread crosses in bone never drilled before.
 * A stripped screw, and one in the track of an earlier screw of the same size, earns none; one that
 * may meet an old track earns anything from none to all. A conventional screw in the shaft is taken
 * to cross both cortices where the file does not say; a locking screw one or both. (Counting no
 * hold for a reused hole is our convention and on the safe side.)
 *
 * @param side near or far
 * @param conventional whether a conventional screw holds on this side
 * @param locking whether a locking screw holds on this side
 * @param credits sum of the cortices
 * @param effectiveLocking locking screws with both cortices, one with a single cortex counting half
 *     in good bone and none in poor bone
 * @param working what was counted, in words
 * @param missing what would make the sums exact
 */
public record ScrewHold(
    HoleSide side,
    boolean conventional,
    boolean locking,
    Dimension credits,
    Dimension effectiveLocking,
    String working,
    List<MissingFact> missing) {

  private static final Dimension ZERO = new Dimension(0, 0, false, "");

  /** Return what is held on both sides, near then far; nothing where a screw's side is unknown. */
  public static Optional<List<ScrewHold>> bothSides(Scene scene) {
    List<PlacedPlate> plates = scene.plates();
    boolean told =
        plates.stream()
            .allMatch(
                plate ->
                    plate.plate().screws().isPresent()
                        && plate
                            .allHoles()
                            .filter(hole -> plate.screwIn(hole).isPresent())
                            .noneMatch(hole -> plate.side(hole) == HoleSide.UNSURE));
    return plates.isEmpty() || !told
        ? Optional.empty()
        : Optional.of(
            List.of(
                new Sum(scene, HoleSide.NEAR).over(plates),
                new Sum(scene, HoleSide.FAR).over(plates)));
  }

  /** Return what the file must say for the sides of all screws to be known. */
  public static Reading unknownSides(Scene scene) {
    List<MissingFact> missing = new ArrayList<>();
    for (PlacedPlate plate : scene.plates()) {
      String id = plate.plate().id();
      missing.add(
          plate.plate().screws().isEmpty()
              ? scene.missing(
                  "fixation/" + id + "/screws", "Which holes of " + id + " hold which screw?")
              : scene.missing(
                  "fixation/" + id + "/place",
                  "Which two holes of " + id + " lie either side of the zone?"));
    }
    return missing.isEmpty() ? Plates.noPlate(scene) : new Reading.Unknown(missing);
  }

  /** Adds up one side. */
  private static final class Sum {
    private final Scene scene;
    private final HoleSide side;
    private final Set<MissingFact> missing = new LinkedHashSet<>();
    private final List<String> parts = new ArrayList<>();
    private boolean conventional;
    private boolean locking;
    private Dimension credits = ZERO;
    private Dimension effective = ZERO;

    Sum(Scene scene, HoleSide side) {
      this.scene = scene;
      this.side = side;
    }

    ScrewHold over(List<PlacedPlate> plates) {
      for (PlacedPlate plate : plates) {
        List<Integer> filled =
            plate.holes(side).stream().filter(h -> plate.screwIn(h).isPresent()).toList();
        filled.forEach(hole -> add(plate, hole, plate.screwIn(hole).orElseThrow()));
        if (!filled.isEmpty()) {
          parts.add(
              "holes " + filled.stream().map(String::valueOf).collect(Collectors.joining(", ")));
        }
      }
      String where = side == HoleSide.NEAR ? "near side: " : "far side: ";
      return new ScrewHold(
          side,
          conventional,
          locking,
          credits,
          effective,
          where + (parts.isEmpty() ? "no screw" : String.join("; ", parts)),
          List.copyOf(missing));
    }

    private void add(PlacedPlate plate, int hole, ScrewRow row) {
      Dimension cortices = cortices(plate, row);
      Dimension share = freshShare(plate, hole, row);
      Dimension credit =
          new Dimension(
              cortices.min() * share.min(),
              cortices.max() * share.max(),
              cortices.assumed() || share.assumed(),
              "");
      credits = credits.plus(credit).because("");
      if (row.type() == ScrewRow.Type.LOCKING) {
        locking = true;
        effective = effective.plus(effective(credit)).because("");
      } else {
        conventional = true;
      }
    }

    private Dimension cortices(PlacedPlate plate, ScrewRow row) {
      if (row.cortices().isPresent()) {
        return Dimension.stated(row.cortices().get(), "");
      }
      if (row.type() != ScrewRow.Type.LOCKING) {
        return Dimension.assumed(2, 2, "conventional screws taken as crossing both cortices");
      }
      missing.add(
          scene.missing(
              "fixation/" + plate.plate().id() + "/screws/cortices",
              "Do the locking screws of " + plate.plate().id() + " cross one cortex or both?"));
      return Dimension.assumed(1, 2, "");
    }

    private Dimension freshShare(PlacedPlate plate, int hole, ScrewRow row) {
      if (row.state().equals(Optional.of(ScrewRow.State.STRIPPED)) || failedSince(plate, row)) {
        return ZERO;
      }
      if (row.track().isPresent()) {
        double share = row.track().get() == ScrewRow.Track.OLD_HOLE ? 0 : 1;
        return new Dimension(share, share, false, "");
      }
      if (keepsClear(plate, hole)) {
        return new Dimension(1, 1, false, "");
      }
      missing.add(
          scene.missing(
              "fixation/" + plate.plate().id() + "/screws/track",
              "Do the screws of "
                  + plate.plate().id()
                  + " bite into fresh bone or into old screw holes?"));
      return Dimension.assumed(0, 1, "");
    }

    /** A screw of a plate left in place that was seen loose or broken before this subject. */
    private boolean failedSince(PlacedPlate plate, ScrewRow row) {
      boolean retained = scene.before(plate.plate()).size() < scene.subject().upToHere().size() - 1;
      return retained
          && row.state().map(state -> state != ScrewRow.State.SOUND).orElse(false)
          && row.stateDay().map(scene.subject()::knows).orElse(true);
    }

    /** Return whether the screw certainly misses every plate screw put in before its own plate. */
    private boolean keepsClear(PlacedPlate plate, int hole) {
      List<Operation> before = scene.before(plate.plate());
      if (before.stream().noneMatch(o -> o.fixation().map(f -> !f.isEmpty()).orElse(true))) {
        return true;
      }
      List<Track> older = Track.of(before, scene.zone());
      Optional<Track> track = Track.of(scene.subject().id(), plate, hole);
      Dimension outer = scene.bone().outerAtShaft();
      boolean cut =
          scene.subject().upToHere().stream()
              .anyMatch(operation -> operation.resection().map(r -> !r.isEmpty()).orElse(false));
      return !cut // levels on the far side have moved since, by how much is not told
          && everyTrackTold(before, older)
          && track.isPresent()
          && older.stream().allMatch(old -> track.get().against(old, outer) == Track.Overlap.CLEAR);
    }

    private static boolean everyTrackTold(List<Operation> before, List<Track> older) {
      if (before.stream().anyMatch(operation -> operation.fixation().isEmpty())) {
        return false;
      }
      List<Plate> plates =
          before.stream()
              .flatMap(operation -> operation.fixation().orElseThrow().stream())
              .filter(Plate.class::isInstance)
              .map(Plate.class::cast)
              .toList();
      long screws =
          plates.stream()
              .flatMap(plate -> plate.screws().stream().flatMap(List::stream))
              .mapToLong(row -> row.at().size())
              .sum();
      return plates.stream().allMatch(plate -> plate.screws().isPresent())
          && Track.othersAreTold(before)
          && older.stream().filter(Track::ofPlateScrew).count() == screws;
    }

    private Dimension effective(Dimension credit) {
      double single = scene.possibly("bone-grade", "poor") ? 0 : 0.5;
      double singleAtBest = scene.certainly("bone-grade", "poor") ? 0 : 0.5;
      double min = credit.min() >= 2 ? 1 : credit.min() >= 1 ? single : 0;
      double max = credit.max() >= 2 ? 1 : credit.max() >= 1 ? singleAtBest : 0;
      boolean gradeCounts = single < singleAtBest && credit.min() < 2 && credit.max() >= 1;
      if (gradeCounts) {
        missing.addAll(scene.read("bone-grade").missing());
      }
      return new Dimension(min, max, credit.assumed() || gradeCounts, "");
    }
  }
}
