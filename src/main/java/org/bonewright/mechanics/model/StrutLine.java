package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.mechanics.answer.StrutCut;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;

/**
 * A strut on the axis of the bone: a node at each screw that passes through it. Where fewer than
 * two screws do, it carries nothing.
 */
final class StrutLine {

  /** Length that a screw stiffens on either side, in its core diameters. */
  private static final double STIFFENS = 1.0;

  private static final double LEAST_FREE = 0.05;

  private final Optional<BoneStrut> strut;
  private final LevelNodes nodes;
  private final List<Stretch> stretches = new ArrayList<>();

  /** A stretch between two levels, with the index of its link. */
  private record Stretch(double from, double to, int link) {}

  StrutLine(Frame frame, Optional<BoneStrut> strut, List<PlateScrew> screws) {
    this.strut = strut;
    NavigableMap<Double, Double> stiff =
        strut.map(inside -> stiffened(inside, screws)).orElseGet(TreeMap::new);
    this.nodes = new LevelNodes(frame, stiff.keySet(), BoneLine.ALONG::times);
    strut.ifPresent(inside -> lay(frame, inside, stiff));
  }

  /** Return the length that a screw stiffens at each level; nothing for fewer than two levels. */
  private static NavigableMap<Double, Double> stiffened(BoneStrut inside, List<PlateScrew> screws) {
    NavigableMap<Double, Double> stiff = new TreeMap<>();
    screws.stream()
        .filter(screw -> screw.at() >= inside.from() && screw.at() <= inside.to())
        .filter(screw -> screw.far() > 0)
        .forEach(screw -> stiff.merge(screw.at(), screw.core() * STIFFENS, Math::max));
    return stiff.size() < 2 ? new TreeMap<>() : stiff;
  }

  private void lay(Frame frame, BoneStrut inside, NavigableMap<Double, Double> stiff) {
    BeamStiffness solid = inside.section().of(inside.material());
    nodes.eachStretch(
        (from, to) ->
            stretches.add(new Stretch(from, to, frame.link(beam(from, to, stiff, solid)))));
  }

  /**
   * Return what a load adds to it at the fracture; empty where no stretch crosses that.
   *
   * @param before how the bone stands before the load
   * @param after how it stands under it
   */
  Optional<StrutCut> cut(Answer before, Answer after) {
    return stretches.stream()
        .filter(stretch -> stretch.from() < 0 && stretch.to() > 0)
        .findFirst()
        .map(
            stretch -> {
              Six far = after.force(stretch.link()).minus(before.force(stretch.link()));
              return new StrutCut(
                  far.along(),
                  far.aboutAway() - stretch.to() * far.across(),
                  far.aboutAcross() + stretch.to() * far.away(),
                  far.aboutAlong());
            });
  }

  private Link beam(
      double from, double to, NavigableMap<Double, Double> stiff, BeamStiffness solid) {
    double length = to - from;
    double near = Math.min(stiff.getOrDefault(from, 0.0), length * (1 - LEAST_FREE) / 2);
    double far = Math.min(stiff.getOrDefault(to, 0.0), length * (1 - LEAST_FREE) / 2);
    return Beams.link(
        nodes.at(from),
        nodes.at(to),
        BoneLine.ALONG.times(from),
        BoneLine.ALONG.times(to),
        new Vector(1, 0, 0),
        List.of(
            new Beams.Piece(near, BeamStiffness.RIGID),
            new Beams.Piece(length - near - far, solid),
            new Beams.Piece(far, BeamStiffness.RIGID)),
        List.of());
  }

  /** Return the two walls that a screw at this level passes, the near one first. */
  List<Shank.Wall> walls(double level) {
    if (strut.isEmpty() || !nodes.has(level)) {
      return List.of();
    }
    int node = nodes.at(level);
    BoneStrut inside = strut.get();
    double middle = inside.section().middleRadius();
    return List.of(
        Shank.Wall.of(middle, inside.material(), inside.section(), node, 1),
        Shank.Wall.of(-middle, inside.material(), inside.section(), node, 1));
  }
}
