package org.bonewright.mechanics.model;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.frame.Six;

/**
 * How a fixed bone answers while its patches stand in one way: linear but for the ends of the bone,
 * which may meet. The springs that patches have lost are taken out of the whole bone by the rule of
 * Sherman, Morrison and Woodbury: a force at each lost spring that undoes what it carries.
 */
final class Response {

  private static final int SIX = Reduced.SIX;

  private final Reduced reduced;
  private final List<Stand> stands;
  private final int[] lost;
  private final double[] roots;
  private final SmallCholesky factor;
  private final double[][] pushed;
  private final Optional<Meeting> meeting;

  private Response(
      Reduced reduced, List<Stand> stands, int[] lost, double[] roots, SmallCholesky factor) {
    this.reduced = reduced;
    this.stands = List.copyOf(stands);
    this.lost = lost;
    this.roots = roots;
    this.factor = factor;
    this.pushed = pushed();
    this.meeting = meeting();
  }

  /**
   * Prepare the answers.
   *
   * @param stands how each patch stands
   * @return empty if something could move without resistance
   */
  static Optional<Response> of(Reduced reduced, List<Stand> stands) {
    int[] lost =
        IntStream.range(0, stands.size() * SIX)
            .filter(row -> !stands.get(row / SIX).resists(row % SIX) && spring(reduced, row) > 0)
            .toArray();
    double[] roots = new double[lost.length];
    double[][] matrix = new double[lost.length][lost.length];
    for (int i = 0; i < lost.length; i++) {
      roots[i] = Math.sqrt(spring(reduced, lost[i]));
      for (int j = 0; j <= i; j++) {
        matrix[i][j] = -roots[i] * reduced.give(lost[i])[lost[j]] * roots[j];
      }
      matrix[i][i] += 1;
    }
    return SmallCholesky.of(matrix)
        .map(factor -> new Response(reduced, stands, lost, roots, factor));
  }

  private static double spring(Reduced reduced, int row) {
    return reduced.joined().spots().get(row / SIX).link().stiffness().get(row % SIX, row % SIX);
  }

  /** Return how all points move under each of six unit forces that push the bone ends apart. */
  private double[][] pushed() {
    return reduced
        .ends()
        .map(
            ends -> {
              double[][] columns = new double[SIX][];
              for (int i = 0; i < SIX; i++) {
                columns[i] = reduced.give(ends + i).clone();
                settle(columns[i]);
              }
              return columns;
            })
        .orElse(new double[0][]);
  }

  private Optional<Meeting> meeting() {
    if (!(reduced.fixed().fracture().filling() instanceof Filling.Touching touching)) {
      return Optional.empty();
    }
    BoneEnds ends =
        new BoneEnds(
            reduced.fixed().shaft().section(),
            reduced.fixed().shaft().material().young(),
            reduced.fixed().fracture().gap());
    double[][] give = new double[SIX][];
    for (int i = 0; i < SIX; i++) {
      give[i] = ends(pushed[i]);
    }
    return Meeting.of(ends, touching.friction(), give);
  }

  private double[] ends(double[] all) {
    return Arrays.copyOfRange(all, reduced.rows() - SIX, reduced.rows());
  }

  /** Add to movements of the whole bone what the lost springs no longer hold back. */
  private void settle(double[] moved) {
    double[] forces = undoing(moved);
    for (int i = 0; i < lost.length; i++) {
      add(moved, reduced.give(lost[i]), forces[i]);
    }
  }

  /** Return the forces that undo the lost springs, from movements of the whole bone. */
  private double[] undoing(double[] moved) {
    double[] forces = new double[lost.length];
    for (int i = 0; i < lost.length; i++) {
      forces[i] = roots[i] * moved[lost[i]];
    }
    factor.solve(forces);
    for (int i = 0; i < lost.length; i++) {
      forces[i] *= roots[i];
    }
    return forces;
  }

  private static void add(double[] sum, double[] other, double factor) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * other[i];
    }
  }

  /** Return how each patch stands. */
  List<Stand> stands() {
    return stands;
  }

  /** Return the bone that answers. */
  Reduced reduced() {
    return reduced;
  }

  /** Return the answers to shares of a load. */
  Line to(Load load) {
    double[] start = reduced.prestressed().clone();
    for (int patch = 0; patch < stands.size(); patch++) {
      for (int i = 0; i < SIX; i++) {
        double kept = stands.get(patch).kept().get(i);
        if (kept != 0) {
          add(start, reduced.give(patch * SIX + i), -kept);
        }
      }
    }
    settle(start);
    double[] slope = reduced.under(load);
    settle(slope);
    return new Line(load, start, slope);
  }

  /** What a share of a load does at the points at which the bone may change. */
  static final class Point {

    private final double share;
    private final double[] moved;
    private final Optional<Meeting.Rest> rest;

    private Point(double share, double[] moved, Optional<Meeting.Rest> rest) {
      this.share = share;
      this.moved = moved;
      this.rest = rest;
    }
  }

  /** The answers to one load, from none of it to all of it and beyond. */
  final class Line {

    private final Load load;
    private final double[] start;
    private final double[] slope;
    private Optional<Six> guess = Optional.empty();

    private Line(Load load, double[] start, double[] slope) {
      this.load = load;
      this.start = start;
      this.slope = slope;
    }

    /** Return the load. */
    Load load() {
      return load;
    }

    /** Return what a share of the load does; empty if the bone ends found no rest. */
    Optional<Point> at(double share) {
      double[] moved = start.clone();
      add(moved, slope, share);
      if (reduced.ends().isEmpty()) {
        return Optional.of(new Point(share, moved, Optional.empty()));
      }
      double[] free = ends(moved);
      Optional<Meeting.Rest> rest =
          meeting.flatMap(known -> known.rest(free, guess.map(Six::values).orElse(free)));
      return rest.map(
          found -> {
            guess = Optional.of(found.movement());
            for (int i = 0; i < SIX; i++) {
              add(moved, pushed[i], found.push().get(i));
            }
            return new Point(share, moved, rest);
          });
    }

    /** Return everything that a share of the load does. */
    Answer whole(Point point) {
      double[] forces = new double[reduced.rows()];
      for (int i = 0; i < lost.length; i++) {
        forces[lost[i]] = roots[i] * roots[i] * point.moved[lost[i]];
      }
      for (int patch = 0; patch < stands.size(); patch++) {
        for (int i = 0; i < SIX; i++) {
          forces[patch * SIX + i] -= stands.get(patch).kept().get(i);
        }
      }
      point.rest.ifPresent(
          rest -> System.arraycopy(rest.push().values(), 0, forces, forces.length - SIX, SIX));
      return new Answer(
          Response.this,
          reduced.whole(load.times(point.share), forces),
          point.rest,
          IntStream.range(0, stands.size()).mapToObj(patch -> carried(point, patch)).toList());
    }
  }

  /** Return how a point moved: six numbers. */
  Six moved(Point point, int spot) {
    return Reduced.six(point.moved, spot);
  }

  /** Return what a patch carries beyond what it keeps: six numbers, as it resists them. */
  Six carried(Point point, int patch) {
    double[] carried = new double[SIX];
    for (int i = 0; i < SIX; i++) {
      if (stands.get(patch).resists(i)) {
        carried[i] = spring(reduced, patch * SIX + i) * point.moved[patch * SIX + i];
      }
    }
    return Six.of(carried);
  }

  /** Return the pull in N on a watched thread, across the whole connection of plate and bone. */
  double pull(Point point, int thread) {
    HeldThread held = reduced.threads().get(thread);
    double pull = held.pull(point.moved[reduced.rows() + thread]);
    if (held.patch().isPresent()) {
      int patch = held.patch().getAsInt();
      pull += stands.get(patch).kept().along() + carried(point, patch).along();
    }
    return pull;
  }
}
