package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.LaggedScrew;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.SolvedFrame;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.HollowCircle;

/**
 * A fixed bone laid into a frame, ready for loads. Its patches are whole, and a nail rests against
 * its canal wherever it may.
 *
 * @param frame all nodes and links
 * @param bone the nodes on the axis of the bone
 * @param plates the plates
 * @param strut the strut; a line without nodes where there is none
 * @param onlay the strut on the surface, where something holds it
 * @param screws the screws
 * @param nail the nail, if there is one
 * @param fixator the external fixator, if there is one
 * @param lags the lag screws
 * @param spots where something may change: the patches under pressed screws, the rests of a nail,
 *     then the heads of lag screws
 * @param ends the pair of bone ends: along the bone, towards the plate, across. It is a link of the
 *     frame only where a layer joins the ends
 */
record Joined(
    SolvedFrame frame,
    BoneLine bone,
    List<PlateLine> plates,
    StrutLine strut,
    Optional<OnlayLine> onlay,
    List<ScrewColumn> screws,
    Optional<NailLine> nail,
    Optional<FixatorLine> fixator,
    List<LagColumn> lags,
    List<Spot> spots,
    Link ends) {

  /**
   * A point that may change.
   *
   * @param screw index of the screw whose patch it is; empty for all else
   * @param at level in mm
   * @param link its place, axes and springs; of a patch away from the bone, along it, across
   * @param start how it stands before any load
   */
  record Spot(OptionalInt screw, double at, Link link, Stand start) {}

  /** Return the index of the patch under a screw; empty where it has none. */
  OptionalInt patch(int screw) {
    return IntStream.range(0, spots.size())
        .filter(spot -> spots.get(spot).screw().equals(OptionalInt.of(screw)))
        .findFirst();
  }

  /** Join everything; empty if something could move without resistance. */
  static Optional<Joined> of(FixedBone fixed) {
    Frame frame = new Frame();
    List<Double> levels = new ArrayList<>();
    fixed.screws().forEach(screw -> levels.add(screw.at()));
    fixed.nail().ifPresent(inside -> levels.addAll(NailLine.levels(inside)));
    fixed
        .beside()
        .fixator()
        .ifPresent(outside -> outside.pins().forEach(pin -> levels.add(pin.at())));
    for (LaggedScrew lag : fixed.beside().lags()) {
      levels.add(lag.head().at());
      levels.add(lag.thread().at());
    }
    fixed.beside().onlay().ifPresent(outside -> levels.addAll(outside.wires()));
    BoneLine bone = new BoneLine(frame, fixed, levels);
    double outer = fixed.shaft().section().outer();
    List<PlateLine> plates = new ArrayList<>();
    for (int i = 0; i < fixed.plates().size(); i++) {
      int plate = i;
      List<PlateScrew> own = fixed.screws().stream().filter(s -> s.plate() == plate).toList();
      plates.add(new PlateLine(frame, fixed.plates().get(i), outer, own));
    }
    StrutLine strut = new StrutLine(frame, fixed.strut(), fixed.screws());
    Optional<OnlayLine> onlay = OnlayLine.of(frame, fixed, bone);
    List<ScrewColumn> columns = new ArrayList<>();
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < fixed.screws().size(); i++) {
      PlateScrew screw = fixed.screws().get(i);
      PlateLine plate = plates.get(screw.plate());
      columns.add(ScrewColumn.of(frame, screw, plate, fixed.shaft(), bone, strut, onlay));
      if (screw.head() instanceof Head.Pressed pressed && pressed.force() > 0) {
        Patch patch = new Patch(pressed, fixed.shaft().material());
        Link link = link(patch, outer, screw.at(), plate, bone);
        frame.link(link);
        spots.add(new Spot(OptionalInt.of(i), screw.at(), link, PatchStand.whole(patch)));
      }
    }
    Optional<NailLine> nail =
        fixed.nail().map(inside -> new NailLine(frame, inside, fixed.shaft(), bone));
    nail.ifPresent(line -> spots.addAll(line.rests()));
    Optional<FixatorLine> fixator =
        fixed
            .beside()
            .fixator()
            .map(outside -> new FixatorLine(frame, outside, fixed.shaft(), bone));
    List<LagColumn> lags = new ArrayList<>();
    for (LaggedScrew screw : fixed.beside().lags()) {
      LagColumn lag = LagColumn.of(frame, screw, fixed.shaft(), bone);
      lags.add(lag);
      spots.add(lag.head());
    }
    Link ends = ends(fixed, bone);
    if (fixed.fracture().filling() instanceof Filling.Layer) {
      frame.link(ends);
    }
    return frame
        .hold(bone.held())
        .map(
            solved ->
                new Joined(
                    solved, bone, plates, strut, onlay, columns, nail, fixator, lags, spots, ends))
        .flatMap(loose -> Tightening.of(fixed, loose));
  }

  /** Return the same with other points that may change. */
  Joined with(List<Spot> others) {
    return new Joined(
        frame, bone, plates, strut, onlay, screws, nail, fixator, lags, List.copyOf(others), ends);
  }

  /** Return how the head of each lag screw stands before any load: the last of all points. */
  List<Spot> heads() {
    return spots.subList(spots.size() - lags.size(), spots.size());
  }

  private static Link link(
      Patch patch, double outer, double level, PlateLine plate, BoneLine bone) {
    return Link.springs(
        bone.at(level),
        plate.node(level),
        plate.outward().times(outer / 2).plus(BoneLine.ALONG.times(level)),
        Turned.screw(plate.outward()),
        patch.springs());
  }

  private static Link ends(FixedBone fixed, BoneLine bone) {
    Six springs = Six.NONE;
    if (fixed.fracture().filling() instanceof Filling.Layer layer) {
      HollowCircle tube = fixed.shaft().section();
      double thick = fixed.fracture().layer();
      double young = layer.material().young();
      double shear = layer.material().shear();
      springs =
          new Six(
              young * tube.area() / thick,
              shear * tube.area() / thick,
              shear * tube.area() / thick,
              shear * tube.torsion() / thick,
              young * tube.weak() / thick,
              young * tube.weak() / thick);
    }
    return Link.springs(
        bone.proximalEnd(),
        bone.distalEnd(),
        new Vector(0, 0, 0),
        Turned.plate(new Vector(1, 0, 0)),
        springs);
  }
}
