package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.plate.Plates;

/**
 * What the plate screws on one side of the zone hold.
 *
 * <p>A screw earns what {@link ScrewCredit} gives it.
 *
 * @param side near or far
 * @param conventional whether a conventional screw holds on this side
 * @param locking whether a locking screw holds on this side
 * @param credits sum of the cortices
 * @param effectiveLocking locking screws with both cortices, one with a single cortex counting half
 *     in good bone, none in poor bone, and in full beside a nail
 * @param lost cortices crossed without hold, for the sake of old holes
 * @param working what was counted, in words
 * @param missing what would make the sums exact
 */
public record ScrewHold(
    HoleSide side,
    boolean conventional,
    boolean locking,
    Dimension credits,
    Dimension effectiveLocking,
    Dimension lost,
    String working,
    List<MissingFact> missing) {

  private static final Dimension ZERO = new Dimension(0, 0, false, "");

  /** Return what is held on both sides, near then far; nothing where a screw's side is unknown. */
  public static Optional<List<ScrewHold>> bothSides(Scene scene) {
    return scene.once("screw-hold", () -> addUp(scene));
  }

  /**
   * Answer a yes-or-no question about both sides: no where there certainly is no plate.
   *
   * @param yes the working where it is so
   * @param no the working where it is not
   */
  public static Reading ask(
      Scene scene, Predicate<List<ScrewHold>> question, String yes, String no) {
    if (scene.plates().isEmpty()) {
      return scene.certainly("plate-used", "no")
          ? Reading.word("no", "no plate in place")
          : Plates.noPlate(scene);
    }
    return bothSides(scene)
        .map(both -> question.test(both) ? Reading.word("yes", yes) : Reading.word("no", no))
        .orElseGet(() -> unknownSides(scene));
  }

  private static Optional<List<ScrewHold>> addUp(Scene scene) {
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
    private Dimension lost = ZERO;

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
          lost,
          where + (parts.isEmpty() ? "no screw" : String.join("; ", parts)),
          List.copyOf(missing));
    }

    private void add(PlacedPlate plate, int hole, ScrewRow row) {
      ScrewCredit earned = new ScrewCredit(scene, plate, hole, row);
      missing.addAll(earned.missing());
      credits = credits.plus(earned.credit()).because("");
      lost = lost.plus(earned.lost()).because("");
      if (row.type() == ScrewRow.Type.LOCKING) {
        locking = true;
        effective = effective.plus(effective(earned.credit())).because("");
      } else {
        conventional = true;
      }
    }

    private Dimension effective(Dimension credit) {
      Dimension single = worthOfSingleCortex();
      double min = credit.min() >= 2 ? 1 : credit.min() >= 1 ? single.min() : 0;
      double max = credit.max() >= 2 ? 1 : credit.max() >= 1 ? single.max() : 0;
      boolean open = single.min() < single.max() && credit.min() < 2 && credit.max() >= 1;
      if (open) {
        missing.addAll(Reading.missingOf(scene.read("bone-grade"), scene.read("nail-used")));
      }
      return new Dimension(min, max, credit.assumed() || open, "");
    }

    /** Beside a nail that holds the bone a single cortex is enough: there is no room for two. */
    private Dimension worthOfSingleCortex() {
      if (scene.certainly("nail-used", "yes")) {
        return new Dimension(1, 1, false, "");
      }
      double least = scene.possibly("bone-grade", "poor") ? 0 : 0.5;
      double most = scene.certainly("bone-grade", "poor") ? 0 : 0.5;
      return new Dimension(least, scene.possibly("nail-used", "yes") ? 1 : most, false, "");
    }
  }
}
