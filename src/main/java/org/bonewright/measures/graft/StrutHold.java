package org.bonewright.measures.graft;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.HoleSide;
import org.bonewright.bone.PlacedPlate;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Kind;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * What holds a strut on each side of the zone, counted from certainly to possibly so.
 *
 * <p>A plate screw crosses a strut in the canal when it crosses both cortices at a level of the
 * strut. It crosses one under the plate when it lies at its level; one opposite the plate when it
 * also stands out beyond the far cortex by the wall of the strut (our conventions).
 */
final class StrutHold {

  private static final double UNDER_THE_PLATE = 30;
  private static final double OPPOSITE = 135;
  private static final double THICK_WALL = 12;

  private final Scene scene;
  private final Strut strut;
  private final Optional<StrutReach> zone;
  private final Optional<Dimension> centre;
  private final int[] certain = new int[2];
  private final int[] possible = new int[2];

  private StrutHold(Scene scene, Strut strut) {
    this.scene = scene;
    this.strut = strut;
    this.zone = StrutReach.of(scene);
    this.centre = scene.zone().centre();
  }

  /** Return the screws through a strut on the side that has fewer. */
  static Reading screws(Scene scene, Strut strut) {
    StrutHold hold = new StrutHold(scene, strut);
    return hold.addScrews() ? hold.fewer("screws through it") : hold.open();
  }

  /** Return the screws and wires that hold a strut on the side that has fewer. */
  static Reading screwsAndWires(Scene scene, Strut strut) {
    StrutHold hold = new StrutHold(scene, strut);
    if (!hold.addScrews()) {
      return hold.open();
    }
    hold.addWires();
    return hold.fewer("screws and wires");
  }

  private Reading open() {
    return Reading.unknown(asked());
  }

  private MissingFact asked() {
    return scene.missing(
        "fixation/" + strut.id(),
        "Which screws and wires hold the strut on each side of the zone, and at which levels?");
  }

  private Reading fewer(String what) {
    int min = Math.min(certain[0], certain[1]);
    int max = Math.min(possible[0], possible[1]);
    return new Reading.Amount(
        min,
        max,
        Kind.FACT,
        what + ": near " + shown(0) + ", far " + shown(1),
        min == max ? List.of() : List.of(asked()));
  }

  private String shown(int side) {
    return certain[side] == possible[side]
        ? String.valueOf(certain[side])
        : certain[side] + " to " + possible[side];
  }

  /** Add the screws of every plate; false where they are not stated. */
  private boolean addScrews() {
    List<PlacedPlate> plates = scene.plates();
    boolean told = plates.stream().allMatch(plate -> plate.plate().screws().isPresent());
    if (!told || (plates.isEmpty() && !scene.certainly("plate-used", "no"))) {
      return false;
    }
    for (PlacedPlate plate : plates) {
      for (int hole : plate.allHoles().toArray()) {
        plate.screwIn(hole).ifPresent(row -> add(plate, hole, row));
      }
    }
    return true;
  }

  private void add(PlacedPlate plate, int hole, ScrewRow row) {
    Dimension level =
        centre
            .flatMap(middle -> plate.distance(hole).map(middle::plus))
            .orElse(Dimension.assumed(0, 600, "level not known"));
    boolean surely = StrutReach.within(strut, level, true) && crosses(plate, row, true);
    boolean maybe = StrutReach.within(strut, level, false) && crosses(plate, row, false);
    HoleSide side = plate.side(hole);
    count(0, surely && side == HoleSide.NEAR, maybe && mayBe(side, HoleSide.NEAR));
    count(1, surely && side == HoleSide.FAR, maybe && mayBe(side, HoleSide.FAR));
  }

  private static boolean mayBe(HoleSide side, HoleSide wanted) {
    return side == wanted || side == HoleSide.UNSURE;
  }

  private void count(int side, boolean surely, boolean maybe) {
    certain[side] += surely ? 1 : 0;
    possible[side] += maybe ? 1 : 0;
  }

  private boolean crosses(PlacedPlate plate, ScrewRow row, boolean surely) {
    if (strut.where() == Strut.Where.INTRAMEDULLARY) {
      return crossesBothCortices(row, surely);
    }
    Optional<Direction> on = plate.plate().surface();
    if (on.isEmpty() || strut.surface().isEmpty()) {
      return !surely;
    }
    double apart = on.get().angleTo(strut.surface().get());
    if (apart <= UNDER_THE_PLATE) {
      return true;
    }
    return apart >= OPPOSITE && crossesBothCortices(row, surely) && standsOut(row, surely);
  }

  private static boolean crossesBothCortices(ScrewRow row, boolean surely) {
    if (row.cortices().isEmpty()) {
      return row.type() != ScrewRow.Type.LOCKING || !surely;
    }
    Quantity cortices = row.cortices().get();
    return (surely ? cortices.min() : cortices.max()) >= 2;
  }

  private boolean standsOut(ScrewRow row, boolean surely) {
    if (row.tipBeyondMm().isEmpty()) {
      return !surely;
    }
    Quantity tip = row.tipBeyondMm().get();
    double thick = strut.wallMm().map(Quantity::max).orElse(THICK_WALL);
    double thin = strut.wallMm().map(Quantity::min).orElse(0.0);
    return surely ? tip.min() >= thick : tip.max() >= thin;
  }

  private void addWires() {
    for (Cerclage cerclage : scene.construct().of(Cerclage.class)) {
      boolean surely = cerclage.holds().equals(Optional.of(Cerclage.Holds.STRUT));
      boolean maybe = surely || cerclage.holds().isEmpty();
      for (Quantity at : cerclage.atMm()) {
        Dimension level = Dimension.stated(at, "level stated");
        boolean in = surely && StrutReach.within(strut, level, true);
        boolean mayBeIn = maybe && StrutReach.within(strut, level, false);
        count(
            0,
            in && zone.map(z -> z.isNear(level, true)).orElse(false),
            mayBeIn && zone.map(z -> z.isNear(level, false)).orElse(true));
        count(
            1,
            in && zone.map(z -> z.isFar(level, true)).orElse(false),
            mayBeIn && zone.map(z -> z.isFar(level, false)).orElse(true));
      }
    }
  }
}
