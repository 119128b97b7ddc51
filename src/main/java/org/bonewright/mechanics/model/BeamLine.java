package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.CrossSection;
import org.bonewright.mechanics.section.Material;

/** A beam along the bone: a node at each level at which something is tied to it. */
final class BeamLine {

  /**
   * A stretch between two neighbouring levels.
   *
   * @param from its proximal level
   * @param to its distal level
   * @param link index of its link
   */
  private record Stretch(double from, double to, int link) {}

  /** What is round bends in all directions alike: its bending is told about x and y. */
  static final Vector ROUND = new Vector(1, 0, 0);

  private final Vector axis;
  private final Vector away;
  private final LevelNodes nodes;
  private final List<Stretch> stretches = new ArrayList<>();

  /** What lies between two neighbouring levels. */
  interface Between {

    /** Return the pieces from a level to the next one, in order. */
    List<Beams.Piece> pieces(double from, double to);
  }

  /**
   * Lay a beam of one section into a frame.
   *
   * @param axis a point on its axis at the level of the fracture
   * @param away the direction of its weak bending
   * @param levels at which something is tied to it
   */
  BeamLine(
      Frame frame,
      CrossSection section,
      Material material,
      Vector axis,
      Vector away,
      Collection<Double> levels) {
    this(frame, axis, away, levels, throughout(section.of(material)));
  }

  /**
   * Lay a beam into a frame.
   *
   * @param axis a point on its axis at the level of the fracture
   * @param away the direction of its weak bending
   * @param levels at which something is tied to it
   * @param between what lies between them
   */
  BeamLine(Frame frame, Vector axis, Vector away, Collection<Double> levels, Between between) {
    this.axis = axis;
    this.away = away;
    this.nodes = new LevelNodes(frame, levels, this::point);
    nodes.eachStretch(
        (from, to) ->
            stretches.add(
                new Stretch(from, to, frame.link(beam(from, to, between.pieces(from, to))))));
  }

  private static Between throughout(BeamStiffness stiffness) {
    return (from, to) -> List.of(new Beams.Piece(to - from, stiffness));
  }

  private Link beam(double from, double to, List<Beams.Piece> pieces) {
    return Beams.link(
        nodes.at(from), nodes.at(to), point(from), point(to), away, pieces, List.of());
  }

  /** Return the point on its axis at a level. */
  Vector point(double level) {
    return axis.plus(BoneLine.ALONG.times(level));
  }

  /** Return whether it has a node at a level. */
  boolean has(double level) {
    return nodes.has(level);
  }

  /** Return its node at a level. */
  int at(double level) {
    return nodes.at(level);
  }

  /**
   * Return what it carries at each of its levels and at the fracture, from proximal to distal;
   * where two stretches meet, the one that is bent more. Bending is told about the direction of
   * weak bending (x) and about the one across it (y).
   */
  List<TubeCut> cuts(Answer answer) {
    NavigableMap<Double, TubeCut> cuts = new TreeMap<>();
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
    return List.copyOf(cuts.values());
  }

  /**
   * Return what a load adds to it at the fracture; empty where no stretch crosses that.
   *
   * @param before how the bone stands before the load
   * @param after how it stands under it
   */
  Optional<TubeCut> added(Answer before, Answer after) {
    return stretches.stream()
        .filter(stretch -> stretch.from() < 0 && stretch.to() > 0)
        .findFirst()
        .map(
            stretch ->
                cut(
                    0,
                    stretch.to(),
                    after.force(stretch.link()).minus(before.force(stretch.link()))));
  }

  /** The axes of a stretch are along it, away, across. */
  private static TubeCut cut(double level, double fromFar, Six far) {
    return new TubeCut(
        level,
        far.along(),
        far.aboutAway() - fromFar * far.across(),
        far.aboutAcross() + fromFar * far.away(),
        far.aboutAlong());
  }
}
