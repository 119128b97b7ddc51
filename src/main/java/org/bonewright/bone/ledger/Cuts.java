package org.bonewright.bone.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.GapLeft;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Resection;

/**
 * The pieces cut out of the bone, and how levels have moved since.
 *
 * <p>A level is written as it was read at its operation, after that operation's own cuts were
 * closed. A cut is closed by its length less the gap that was left; where no gap is recorded it may
 * have been closed by anything from nothing to all of it. What lay in a piece that was cut out is
 * gone; what lay beyond has come nearer to the landmark by what was closed.
 */
public final class Cuts {

  /**
   * A piece cut out.
   *
   * @param round number of the operation, from 0
   * @param from level where it began, as read before the cut, mm
   * @param to level where it ended
   * @param closed by how much the bone became shorter there, mm
   */
  public record Cut(int round, Dimension from, Dimension to, Dimension closed) {}

  private final List<Cut> all;

  private Cuts(List<Cut> all) {
    this.all = List.copyOf(all);
  }

  /** Return the cuts of a history. */
  public static Cuts of(List<Step> steps) {
    List<Cut> cuts = new ArrayList<>();
    for (int round = 0; round < steps.size(); round++) {
      cuts.addAll(of(round, steps.get(round).operation()));
    }
    return new Cuts(cuts);
  }

  /**
   * Return the cuts of one operation, the farthest first: all were read before any was closed, and
   * closing one moves only what lies beyond it.
   */
  private static List<Cut> of(int round, Operation operation) {
    List<Resection> pieces = operation.resection().orElse(List.of());
    List<Cut> cuts = new ArrayList<>();
    for (Resection piece : pieces) {
      Dimension from = Dimension.stated(piece.fromMm(), "resection stated");
      Dimension to = Dimension.stated(piece.toMm(), "resection stated");
      cuts.add(new Cut(round, from, to, closed(to.minus(from), operation, pieces.size() == 1)));
    }
    cuts.sort(Comparator.comparingDouble((Cut cut) -> cut.from().middle()).reversed());
    return cuts;
  }

  private static Dimension closed(Dimension length, Operation operation, boolean only) {
    Optional<Dimension> gap = operation.reduction().flatMap(GapLeft::widest);
    double most = Math.max(0, length.max());
    if (gap.isEmpty()) {
      return Dimension.assumed(0, most, "gap left after resection not recorded");
    }
    double least = Math.max(0, length.min() - gap.get().max());
    return new Dimension(
        least,
        Math.max(least, only ? Math.max(0, length.max() - gap.get().min()) : most),
        gap.get().assumed(),
        "resected length less the gap left");
  }

  /** Return the cuts of operations before this one, in order. */
  public List<Cut> before(int round) {
    return all.stream().filter(cut -> cut.round() < round).toList();
  }

  /** Return by how much the operations up to and including this one shortened the bone, mm. */
  public Dimension shortenedBy(int round) {
    Dimension sum = new Dimension(0, 0, false, "no resection");
    for (Cut cut : all) {
      if (cut.round() <= round) {
        sum = sum.plus(cut.closed()).because("resections less the gaps left");
      }
    }
    return sum;
  }

  /**
   * Return the level, as it reads after operation {@code upTo}, of what was read at operation
   * {@code from}; nothing where it certainly lay in a piece that was cut out since.
   */
  public Optional<Dimension> moved(Dimension level, int from, int upTo) {
    Optional<Dimension> now = Optional.of(level);
    for (Cut cut : since(from, upTo)) {
      now = now.flatMap(here -> over(cut, here));
    }
    return now;
  }

  /** Return whether what was read at a level may lie in a piece that was cut out since. */
  boolean mayBeGone(Dimension level, int from, int upTo) {
    Optional<Dimension> now = Optional.of(level);
    for (Cut cut : since(from, upTo)) {
      if (now.isEmpty() || mayLieIn(cut, now.get())) {
        return true;
      }
      now = over(cut, now.get());
    }
    return now.isEmpty();
  }

  private List<Cut> since(int from, int upTo) {
    return all.stream().filter(cut -> cut.round() > from && cut.round() <= upTo).toList();
  }

  private static boolean mayLieIn(Cut cut, Dimension level) {
    return level.max() > cut.from().min() && level.min() < cut.to().max();
  }

  private static boolean liesIn(Cut cut, Dimension level) {
    return level.min() >= cut.from().max() && level.max() <= cut.to().min();
  }

  /** What lies before the cut stays, what lies beyond it comes nearer, what lies in it is gone. */
  private static Optional<Dimension> over(Cut cut, Dimension level) {
    if (liesIn(cut, level)) {
      return Optional.empty();
    }
    if (level.max() <= cut.from().min()) {
      return Optional.of(level);
    }
    boolean maybeBefore = level.min() <= cut.from().max();
    boolean maybeBeyond = level.max() >= cut.to().min();
    double nearest = Math.max(level.min(), cut.to().min()) - cut.closed().max();
    double farthest = level.max() - cut.closed().min();
    double lastBefore = Math.min(level.max(), cut.from().max());
    double min =
        maybeBefore && maybeBeyond
            ? Math.min(level.min(), nearest)
            : maybeBefore ? level.min() : nearest;
    double max =
        maybeBefore && maybeBeyond
            ? Math.max(lastBefore, farthest)
            : maybeBefore ? lastBefore : farthest;
    boolean assumed = level.assumed() || (maybeBeyond && cut.closed().assumed());
    return Optional.of(new Dimension(min, max, assumed, "moved"));
  }

  /** Return the level that what was read at operation {@code from} had in the bone as injured. */
  public Dimension asInjured(Dimension level, int from) {
    Dimension then = level;
    for (int i = all.size() - 1; i >= 0; i--) {
      Cut cut = all.get(i);
      if (cut.round() <= from && then.max() > cut.from().min()) {
        boolean certainlyBeyond = then.min() >= cut.from().max();
        then =
            new Dimension(
                then.min() + (certainlyBeyond ? cut.closed().min() : 0),
                then.max() + cut.closed().max(),
                then.assumed() || cut.closed().assumed(),
                then.basis());
      }
    }
    return then;
  }

  /**
   * Return the zone once an operation has cut out and closed what it does: from the nearest to the
   * farthest of zone and cuts, less what was closed. Where the zone's levels are not known, only
   * its length is followed: as much of it as can be is taken to lie in the cuts.
   */
  FractureZone zoneAfter(Operation operation, FractureZone found, int round) {
    List<Cut> here = all.stream().filter(cut -> cut.round() == round).toList();
    Optional<Dimension> centre = found.centre();
    Optional<Dimension> length = found.length();
    if (here.isEmpty() || length.isEmpty()) {
      return found;
    }
    if (centre.isEmpty()) {
      return found.withLength(lengthAfter(here, length.get()));
    }
    double fromMin = centre.get().min() - length.get().max() / 2;
    double fromMax = centre.get().max() - length.get().min() / 2;
    double toMin = centre.get().min() + length.get().min() / 2;
    double toMax = centre.get().max() + length.get().max() / 2;
    double closedMin = 0;
    double closedMax = 0;
    for (Cut cut : here) {
      fromMin = Math.min(fromMin, cut.from().min());
      fromMax = Math.min(fromMax, cut.from().max());
      toMin = Math.max(toMin, cut.to().min());
      toMax = Math.max(toMax, cut.to().max());
      closedMin += cut.closed().min();
      closedMax += cut.closed().max();
    }
    boolean assumed =
        centre.get().assumed()
            || length.get().assumed()
            || here.stream().anyMatch(cut -> cut.closed().assumed());
    Dimension from = new Dimension(fromMin, fromMax, assumed, "zone and resection stated");
    Dimension to = new Dimension(toMin - closedMax, toMax - closedMin, assumed, from.basis());
    Dimension left = to.minus(from);
    Dimension sum = from.plus(to);
    return new FractureZone(
        Optional.of(left.notBelowZero()),
        Optional.of(new Dimension(sum.min() / 2, sum.max() / 2, assumed, sum.basis())));
  }

  /** Return what is left of a zone beside the cuts, and of the cuts themselves. */
  private static Dimension lengthAfter(List<Cut> cuts, Dimension zone) {
    Dimension cut = new Dimension(0, 0, false, "");
    Dimension closed = cut;
    for (Cut each : cuts) {
      cut = cut.plus(each.to().minus(each.from()).notBelowZero());
      closed = closed.plus(each.closed());
    }
    Dimension beside = zone.minus(cut).notBelowZero();
    Dimension open = cut.minus(closed).notBelowZero();
    return beside.plus(open).because("zone and resection stated");
  }
}
