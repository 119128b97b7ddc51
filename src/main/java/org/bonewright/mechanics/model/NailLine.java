package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.bonewright.mechanics.answer.NailAnswer;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;

/** A nail on the axis of the bone, with its bolts, and the places where its canal may hold it. */
final class NailLine {

  /** The wall of the canal pushes as a screw is held by both cortices: a choice of ours. */
  private static final double CORTICES = 2;

  private final BeamLine tube;
  private final List<BoltColumn> bolts;
  private final List<Joined.Spot> rests = new ArrayList<>();

  /** Lay a nail into a frame. */
  NailLine(Frame frame, MetalNail nail, Shaft shaft, BoneLine bone) {
    this.tube =
        new BeamLine(
            frame, nail.section(), nail.material(), BoneLine.AXIS, BeamLine.ROUND, levels(nail));
    this.bolts =
        nail.bolts().stream()
            .map(
                bolt ->
                    BoltColumn.of(frame, nail, bolt, shaft, tube.at(bolt.at()), bone.at(bolt.at())))
            .toList();
    Six hold = CortexSupport.springs(shaft.material(), shaft.section(), nail.section().outer(), 1);
    double wall = CORTICES * hold.away();
    nail.rests().forEach(rest -> rests.add(spot(frame, rest, wall, bone)));
  }

  /** Return the levels at which a nail is tied to the bone, or may be. */
  static List<Double> levels(MetalNail nail) {
    List<Double> levels = new ArrayList<>();
    nail.bolts().forEach(bolt -> levels.add(bolt.at()));
    nail.rests().forEach(rest -> levels.add(rest.at()));
    return levels;
  }

  private Joined.Spot spot(Frame frame, MetalNail.Rest rest, double wall, BoneLine bone) {
    Link link =
        Link.springs(
            bone.at(rest.at()),
            tube.at(rest.at()),
            BoneLine.ALONG.times(rest.at()),
            Turned.plate(new Vector(1, 0, 0)),
            RestStand.springs(wall));
    frame.link(link);
    return new Joined.Spot(OptionalInt.empty(), rest.at(), link, RestStand.of(rest.slack(), wall));
  }

  /** Return the places where the canal may hold it. */
  List<Joined.Spot> rests() {
    return rests;
  }

  /** Return what it carries. */
  NailAnswer answer(Answer answer) {
    return new NailAnswer(
        tube.cuts(answer), bolts.stream().map(bolt -> bolt.demand(answer)).toList());
  }
}
