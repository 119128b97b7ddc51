package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.mechanics.frame.Beams;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.BeamStiffness;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;

/** The part of a screw or pin that passes walls of bone, each of which holds its thread. */
final class Shank {

  private Shank() {}

  /**
   * A wall that is passed.
   *
   * @param radius how far from the axis of the bone its middle lies, outward positive, in mm
   * @param material of the wall
   * @param thick its thickness in mm
   * @param outer width of what it is the wall of in mm
   * @param node the node that carries it
   * @param share share of the thread that it holds
   */
  record Wall(
      double radius, Material material, double thick, double outer, int node, double share) {

    /** Return a wall of a tube. */
    static Wall of(double radius, Material material, HollowCircle tube, int node, double share) {
      return new Wall(radius, material, tube.wall(), tube.outer(), node, share);
    }

    /** Return its middle where something passes it at a level. */
    Vector at(Vector outward, double level) {
      return outward.times(radius).plus(BoneLine.ALONG.times(level));
    }
  }

  /**
   * Where and how it passes.
   *
   * @param outward from the axis of the bone to where it comes from
   * @param level in mm
   * @param core what its threaded part resists
   * @param major outer diameter of its thread in mm
   * @param lead what comes before its thread begins, on the way to the first wall
   */
  record Passage(
      Vector outward, double level, BeamStiffness core, double major, List<Beams.Piece> lead) {

    private List<Beams.Piece> pieces(boolean first, double length) {
      List<Beams.Piece> pieces = new ArrayList<>(first ? lead : List.of());
      double before = pieces.stream().mapToDouble(Beams.Piece::length).sum();
      pieces.add(new Beams.Piece(length - before, core));
      return pieces;
    }
  }

  /**
   * Lay it into a frame.
   *
   * @param first node from which it comes
   * @param from the point at which that node carries it
   * @param walls the walls in the order in which it passes them
   * @return the indices of its beams, one to each wall
   */
  static List<Integer> through(
      Frame frame, int first, Vector from, Passage passage, List<Wall> walls) {
    List<Integer> beams = new ArrayList<>();
    int last = first;
    Vector start = from;
    for (Wall wall : walls) {
      Vector at = wall.at(passage.outward(), passage.level());
      int node = frame.node(at);
      beams.add(
          frame.link(
              Beams.link(
                  last,
                  node,
                  start,
                  at,
                  BoneLine.ALONG,
                  passage.pieces(beams.isEmpty(), at.minus(start).length()),
                  List.of())));
      frame.link(
          Link.springs(
              wall.node(),
              node,
              at,
              Turned.screw(passage.outward()),
              CortexSupport.springs(
                  wall.material(), wall.thick(), wall.outer(), passage.major(), wall.share())));
      last = node;
      start = at;
    }
    return List.copyOf(beams);
  }
}
