package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Loads;
import org.bonewright.mechanics.frame.Movements;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.Vector;

/**
 * A joined bone reduced to the points at which it may change: its patches, which may give way, and
 * its ends, which may meet. Made once; whatever happens at these points is then a matter of small
 * matrices, and the frame need not be solved again.
 *
 * <p>Movements and forces at all points stand in one array: six numbers for each patch, in order,
 * and then six for the ends where they may meet. Movements have one number more for each thread
 * that is watched: how far its neck stretches.
 */
final class Reduced {

  static final int SIX = 6;

  private final FixedBone fixed;
  private final Joined joined;
  private final Optional<Prestress.Pull> pull;
  private final List<Link> points = new ArrayList<>();
  private final List<HeldThread> threads;
  private final double[][] give;
  private final double[] prestressed;

  /**
   * Reduce a bone.
   *
   * @param threads whose pull is to be watched
   */
  Reduced(FixedBone fixed, Joined joined, Prestress prestress, List<HeldThread> threads) {
    this.fixed = fixed;
    this.threads = List.copyOf(threads);
    this.joined = joined;
    this.pull = prestress.on(joined);
    joined.spots().forEach(spot -> points.add(spot.link()));
    if (meets()) {
      points.add(joined.ends());
    }
    this.give = points.isEmpty() ? new double[0][] : joined.frame().give(points);
    watch();
    this.prestressed =
        pull.isPresent() ? across(joined.frame().under(prestress())) : new double[moved()];
  }

  /** Let every row tell too how far the watched necks stretch, as much as they move its point. */
  private void watch() {
    for (int thread = 0; thread < threads.size(); thread++) {
      Loads unit = joined.frame().loads().pair(threads.get(thread).neck(), Six.unit(0));
      double[] moved = across(joined.frame().under(unit));
      for (int row = 0; row < rows(); row++) {
        give[row] = thread == 0 ? Arrays.copyOf(give[row], moved()) : give[row];
        give[row][rows() + thread] = moved[row];
      }
    }
  }

  /** Return the threads whose pull is watched. */
  List<HeldThread> threads() {
    return threads;
  }

  private boolean meets() {
    return fixed.fracture().filling() instanceof Filling.Touching;
  }

  /** Return the fixed bone. */
  FixedBone fixed() {
    return fixed;
  }

  /** Return the joined bone. */
  Joined joined() {
    return joined;
  }

  /** Return what the first plate is set under before any load. */
  Optional<Prestress.Pull> pull() {
    return pull;
  }

  /** Return how many numbers a movement has. */
  private int moved() {
    return rows() + threads.size();
  }

  /** Return how many numbers there are for all points. */
  int rows() {
    return points.size() * SIX;
  }

  /** Return where the numbers of the bone ends begin, where they may meet. */
  Optional<Integer> ends() {
    return meets() ? Optional.of(rows() - SIX) : Optional.empty();
  }

  /** Return how all points, and the watched necks, move under a unit force at one of them. */
  double[] give(int row) {
    return give[row];
  }

  /** Return how all points move under the prestress alone. */
  double[] prestressed() {
    return prestressed;
  }

  /** Return how all points move under a load alone. */
  double[] under(Load load) {
    return moved() == 0 ? new double[0] : across(joined.frame().under(loads(load)));
  }

  private double[] across(Movements movements) {
    double[] moved = new double[moved()];
    for (int thread = 0; thread < threads.size(); thread++) {
      moved[rows() + thread] = movements.across(threads.get(thread).neck()).along();
    }
    for (int point = 0; point < points.size(); point++) {
      Six six = movements.across(points.get(point));
      for (int i = 0; i < SIX; i++) {
        moved[point * SIX + i] = six.get(i);
      }
    }
    return moved;
  }

  /** Return how every node moves under a load, the prestress, and forces at all points. */
  Movements whole(Load load, double[] forces) {
    Loads loads = loads(load);
    pull.ifPresent(known -> loads.pair(known.at(), known.force()));
    for (int point = 0; point < points.size(); point++) {
      loads.pair(points.get(point), six(forces, point));
    }
    return joined.frame().under(loads);
  }

  /** Return the six numbers of one point. */
  static Six six(double[] all, int point) {
    int at = point * SIX;
    return new Six(all[at], all[at + 1], all[at + 2], all[at + 3], all[at + 4], all[at + 5]);
  }

  private Loads prestress() {
    Loads loads = joined.frame().loads();
    pull.ifPresent(known -> loads.pair(known.at(), known.force()));
    return loads;
  }

  private Loads loads(Load load) {
    double reach = joined.bone().reach();
    return joined
        .frame()
        .loads()
        .add(
            joined.bone().loaded(),
            new Vector(load.shearX(), load.shearY(), load.axial()),
            new Vector(
                load.bendingX() + reach * load.shearY(),
                load.bendingY() - reach * load.shearX(),
                load.torque()));
  }
}
