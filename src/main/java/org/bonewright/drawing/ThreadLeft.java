package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Bite;
import org.bonewright.drawing.words.Standing;

/** What old tracks leave of the threads of new screws, for labels and notes. */
final class ThreadLeft {

  private ThreadLeft() {}

  /** Return whether an old track takes, or may take, something of the thread in a cortex. */
  static boolean isTaken(Standing.Drilled drilled, boolean near) {
    return share(drilled, near).map(share -> share.min() < 0.995).orElse(false);
  }

  /** Return whether it certainly takes something, in either cortex. */
  static boolean isCertain(Standing.Drilled drilled) {
    return share(drilled, true).map(share -> share.max() < 0.995).orElse(false)
        || share(drilled, false).map(share -> share.max() < 0.995).orElse(false);
  }

  private static Optional<Dimension> share(Standing.Drilled drilled, boolean near) {
    return drilled.bite().flatMap(bite -> near ? Optional.of(bite.near()) : bite.far());
  }

  /** Return what is left in one cortex, in percent; a question mark where nothing tells. */
  static String in(Standing.Drilled drilled, boolean near) {
    Dimension share = share(drilled, near).orElseThrow();
    return isUntold(share) ? "?" : percent(share);
  }

  /**
   * Return what is left, for a label that stands for both cortices; empty where old tracks take
   * nothing.
   */
  static String inBoth(Standing.Drilled drilled) {
    boolean near = isTaken(drilled, true);
    boolean far = isTaken(drilled, false);
    if (!near && !far) {
      return "";
    }
    if (share(drilled, false).isEmpty()) {
      return in(drilled, true);
    }
    String inNear = in(drilled, true);
    String inFar = in(drilled, false);
    return inNear.equals(inFar) ? inNear : inNear + ", far " + inFar;
  }

  /** Return a share in percent, as a range where it is one. */
  private static String percent(Dimension share) {
    long min = Math.round(share.min() * 100);
    long max = Math.round(share.max() * 100);
    return min == max ? min + " %" : min + "–" + max + " %";
  }

  /** Return what of the new screws' threads is left, in words. */
  static List<String> sentences(Standing standing) {
    List<String> all = new ArrayList<>();
    List<String> untold = new ArrayList<>();
    for (Standing.Drilled drilled : standing.tracks()) {
      if (drilled.own() && (isTaken(drilled, true) || isTaken(drilled, false))) {
        Bite bite = drilled.bite().orElseThrow();
        if (isUntold(bite.near()) && bite.far().map(ThreadLeft::isUntold).orElse(true)) {
          untold.add(drilled.old().track().name());
        } else {
          all.add(
              drilled.old().track().name()
                  + ": "
                  + percent(bite.near())
                  + " of the thread left in the near cortex"
                  + bite.far().map(far -> ", " + percent(far) + " in the far one").orElse(""));
        }
      }
    }
    if (!untold.isEmpty()) {
      all.add("How much thread old tracks leave cannot be told: " + String.join("; ", untold));
    }
    return all;
  }

  private static boolean isUntold(Dimension share) {
    return share.min() < 0.005 && share.max() > 0.995;
  }
}
