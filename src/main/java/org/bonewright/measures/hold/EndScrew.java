package org.bonewright.measures.hold;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.measures.Scene;

/**
 * The outermost screw at one end of a plate that holds a locking screw.
 *
 * @param plate the plate
 * @param hole the hole of the screw
 * @param kinds the kinds that it may be, as far as is told
 */
record EndScrew(PlacedPlate plate, int hole, Set<Kind> kinds) {

  /** Kinds of end screw, from soft to stiff. */
  enum Kind {
    /** Conventional, in both cortices. */
    CONVENTIONAL,
    /** Locking, tilted. */
    ANGLED,
    /** In one cortex. */
    SINGLE_CORTEX,
    /** Locking, straight, in both cortices. */
    LOCKED;

    static final Set<Kind> STIFF = EnumSet.of(SINGLE_CORTEX, LOCKED);
  }

  /** From here on a locking screw counts as angled; our convention. */
  private static final double ANGLED_FROM_DEG = 10;

  /** Return the end screws of every plate in place with a locking screw, two for each. */
  static List<EndScrew> all(Scene scene) {
    List<EndScrew> ends = new ArrayList<>();
    for (PlacedPlate plate : scene.plates()) {
      int[] filled = plate.allHoles().filter(h -> plate.screwIn(h).isPresent()).toArray();
      if (filled.length > 0 && locking(plate)) {
        ends.add(of(scene, plate, filled[0]));
        ends.add(of(scene, plate, filled[filled.length - 1]));
      }
    }
    return ends;
  }

  private static boolean locking(PlacedPlate plate) {
    return plate.plate().screws().stream()
        .flatMap(List::stream)
        .anyMatch(row -> row.type() == ScrewRow.Type.LOCKING && !row.at().isEmpty());
  }

  private static EndScrew of(Scene scene, PlacedPlate plate, int hole) {
    ScrewRow row = plate.screwIn(hole).orElseThrow();
    Dimension cortices = ScrewCortices.of(row);
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    if (cortices.min() < 2) {
      kinds.add(Kind.SINGLE_CORTEX);
    }
    if (cortices.max() >= 2) {
      kinds.addAll(inBothCortices(scene, row));
    }
    return new EndScrew(plate, hole, kinds);
  }

  /** A plan that does not name a tilt means a straight screw; in the past it is not known. */
  private static Set<Kind> inBothCortices(Scene scene, ScrewRow row) {
    if (row.type() != ScrewRow.Type.LOCKING) {
      return EnumSet.of(Kind.CONVENTIONAL);
    }
    if (row.tiltDeg().isEmpty()) {
      return scene.subject().planned()
          ? EnumSet.of(Kind.LOCKED)
          : EnumSet.of(Kind.LOCKED, Kind.ANGLED);
    }
    Quantity tilt = row.tiltDeg().get();
    double most = Math.max(Math.abs(tilt.min()), Math.abs(tilt.max()));
    double least = Math.max(0, Math.max(tilt.min(), -tilt.max()));
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    if (least < ANGLED_FROM_DEG) {
      kinds.add(Kind.LOCKED);
    }
    if (most >= ANGLED_FROM_DEG) {
      kinds.add(Kind.ANGLED);
    }
    return kinds;
  }

  /** Return whether it is stiff. */
  Certainty stiff() {
    return Certainty.of(
        Kind.STIFF.containsAll(kinds), kinds.stream().anyMatch(Kind.STIFF::contains));
  }

  /** Return how far it lies beyond the zone, in outer diameters of the bone at its level. */
  Optional<Dimension> reach(Scene scene) {
    Dimension outer =
        plate
            .level(hole)
            .map(level -> ScrewLevel.outerAt(scene, level))
            .orElseGet(scene.bone()::outerAtShaft);
    return ScrewLevel.clearOfZone(scene, plate, hole).map(clear -> clear.over(outer));
  }
}
