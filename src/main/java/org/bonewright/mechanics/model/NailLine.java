package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.bonewright.mechanics.answer.NailAnswer;
import org.bonewright.mechanics.answer.NailCut;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;

/** A nail on the axis of the bone, with its bolts, and the places where its canal may hold it. */
final class NailLine {

  /** The wall of the canal pushes as a screw is held by both cortices: a choice of ours. */
  private static final double CORTICES = 2;

  /**
   * A stretch of nail between two neighbouring bolts or rests.
   *
   * @param from level of its proximal end
   * @param to level of its distal end
   * @param link index of its link
   */
  private record Stretch(double from, double to, int link) {}

  private final List<Stretch> stretches = new ArrayList<>();
  private final List<BoltColumn> bolts;
  private final List<Joined.Spot> rests = new ArrayList<>();

  /** Lay a nail into a frame. */
  NailLine(Frame frame, MetalNail nail, Shaft shaft, BoneLine bone) {
    LevelNodes nodes = new LevelNodes(frame, levels(nail), BoneLine.ALONG::times);
    BeamStiffness stiffness = nail.section().of(nail.material());
    nodes.eachStretch(
        (from, to) ->
            stretches.add(new Stretch(from, to, frame.link(beam(nodes, from, to, stiffness)))));
    this.bolts =
        nail.bolts().stream()
            .map(
                bolt ->
                    BoltColumn.of(
                        frame, nail, bolt, shaft, nodes.at(bolt.at()), bone.at(bolt.at())))
            .toList();
    Six hold = CortexSupport.springs(shaft.material(), shaft.section(), nail.section().outer(), 1);
    double wall = CORTICES * hold.away();
    nail.rests().forEach(rest -> rests.add(spot(frame, rest, wall, nodes, bone)));
  }

  /** Return the levels at which a nail is tied to the bone, or may be. */
  static List<Double> levels(MetalNail nail) {
    List<Double> levels = new ArrayList<>();
    nail.bolts().forEach(bolt -> levels.add(bolt.at()));
    nail.rests().forEach(rest -> levels.add(rest.at()));
    return levels;
  }

  private static Link beam(LevelNodes nodes, double from, double to, BeamStiffness stiffness) {
    return Beams.link(
        nodes.at(from),
        nodes.at(to),
        BoneLine.ALONG.times(from),
        BoneLine.ALONG.times(to),
        new Vector(1, 0, 0),
        List.of(new Beams.Piece(to - from, stiffness)),
        List.of());
  }

  private static Joined.Spot spot(
      Frame frame, MetalNail.Rest rest, double wall, LevelNodes nodes, BoneLine bone) {
    Link link =
        Link.springs(
            bone.at(rest.at()),
            nodes.at(rest.at()),
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
    NavigableMap<Double, NailCut> cuts = new TreeMap<>();
    for (Stretch stretch : stretches) {
      Six far = answer.force(stretch.link());
      for (double level : List.of(stretch.from(), 0.0, stretch.to())) {
        if (level >= stretch.from() && level <= stretch.to()) {
          cuts.merge(
              level,
              cut(level, stretch.to() - level, far),
              (a, b) -> a.bending() >= b.bending() ? a : b);
        }
      }
    }
    return new NailAnswer(
        List.copyOf(cuts.values()), bolts.stream().map(bolt -> bolt.demand(answer)).toList());
  }

  /** The axes of a stretch are z, x, y. */
  private static NailCut cut(double level, double fromFar, Six far) {
    return new NailCut(
        level,
        far.along(),
        far.aboutAway() - fromFar * far.across(),
        far.aboutAcross() + fromFar * far.away(),
        far.aboutAlong());
  }
}
