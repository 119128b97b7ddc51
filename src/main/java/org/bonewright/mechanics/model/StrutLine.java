package org.bonewright.mechanics.model;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.mechanics.answer.StrutCut;
import org.bonewright.mechanics.construct.BoneStrut;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.section.BeamStiffness;

/**
 * A strut on the axis of the bone: a node at each screw that passes through it. Where fewer than
 * two screws do, it carries nothing.
 */
final class StrutLine {

  /** Length that a screw stiffens on either side, in its core diameters. */
  private static final double STIFFENS = 1.0;

  private static final double LEAST_FREE = 0.05;

  private final Optional<Laid> laid;

  /** The strut, and the beam that it is in the frame. */
  private record Laid(BoneStrut strut, BeamLine beam) {}

  StrutLine(Frame frame, Optional<BoneStrut> strut, List<PlateScrew> screws) {
    this.laid =
        strut.map(inside -> new Laid(inside, beam(frame, inside, stiffened(inside, screws))));
  }

  private static BeamLine beam(Frame frame, BoneStrut inside, NavigableMap<Double, Double> stiff) {
    BeamStiffness solid = inside.section().of(inside.material());
    return new BeamLine(
        frame,
        BoneLine.AXIS,
        BeamLine.ROUND,
        stiff.keySet(),
        (from, to) ->
            pieces(to - from, stiff.getOrDefault(from, 0.0), stiff.getOrDefault(to, 0.0), solid));
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

  private static List<Beams.Piece> pieces(
      double length, double stiffNear, double stiffFar, BeamStiffness solid) {
    double near = Math.min(stiffNear, length * (1 - LEAST_FREE) / 2);
    double far = Math.min(stiffFar, length * (1 - LEAST_FREE) / 2);
    return List.of(
        new Beams.Piece(near, BeamStiffness.RIGID),
        new Beams.Piece(length - near - far, solid),
        new Beams.Piece(far, BeamStiffness.RIGID));
  }

  /**
   * Return what a load adds to it at the fracture; empty where it crosses that nowhere.
   *
   * @param before how the bone stands before the load
   * @param after how it stands under it
   */
  Optional<StrutCut> cut(Answer before, Answer after) {
    return laid.flatMap(line -> line.beam().added(before, after))
        .map(cut -> new StrutCut(cut.axial(), cut.bendingX(), cut.bendingY(), cut.torque()));
  }

  /** Return the two walls that a screw at this level passes, the near one first. */
  List<Shank.Wall> walls(double level) {
    return laid.filter(line -> line.beam().has(level))
        .map(line -> walls(line.strut(), line.beam().at(level)))
        .orElse(List.of());
  }

  private static List<Shank.Wall> walls(BoneStrut inside, int node) {
    double middle = inside.section().middleRadius();
    return List.of(
        Shank.Wall.of(middle, inside.material(), inside.section(), node, 1),
        Shank.Wall.of(-middle, inside.material(), inside.section(), node, 1));
  }
}
