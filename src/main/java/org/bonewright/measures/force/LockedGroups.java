package org.bonewright.measures.force;

import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.hold.HoldOut;

/**
 * How many times the load the locked screws of each plate bear as groups. On either side of the
 * line they hold what the plate carries across it: the force away from the bone and the moment that
 * bends the plate away, taken in proportion to the load. A group bears it by pull and push along
 * its screws alone; that they also resist tilting is left out. Where that gives less than the load
 * at which the first thread strips, this stands: what holds before anything strips is held.
 */
final class LockedGroups {

  /** A pure moment counts as a force at this distance, mm. */
  private static final double FAR = 1e6;

  /** Of smaller forces and moments, in N, nothing is said. */
  private static final double NOTHING = 1e-6;

  private final LoadAnswer answer;

  /**
   * Prepare.
   *
   * @param answer what the construct answers to the load; the strength of its bone is given
   */
  LockedGroups(LoadAnswer answer) {
    this.answer = answer;
  }

  /** Return the share of the load at which the first group lets go. */
  double share() {
    double group =
        IntStream.range(0, answer.plates().size())
            .mapToDouble(plate -> Math.min(side(plate, at -> at < 0), side(plate, at -> at > 0)))
            .min()
            .orElse(LetGo.MOST);
    double first =
        answer.screws().stream()
            .flatMapToDouble(screw -> screw.margin().stream())
            .min()
            .orElse(LetGo.MOST);
    return Math.max(group, first);
  }

  private double side(int plate, DoublePredicate here) {
    List<ScrewDemand> screws =
        answer.screws().stream()
            .filter(screw -> screw.plate() == plate && here.test(screw.at()))
            .toList();
    return screws.isEmpty()
        ? LetGo.MOST
        : answer.plates().get(plate).stream()
            .filter(cut -> cut.z() == 0)
            .mapToDouble(cut -> share(cut, screws))
            .findFirst()
            .orElse(LetGo.MOST);
  }

  private static double share(PlateCut cut, List<ScrewDemand> screws) {
    double pull = Math.abs(cut.away());
    double place = pull > 0 ? cut.weak() / cut.away() : FAR;
    if (Math.abs(place) >= FAR) {
      pull = Math.abs(cut.weak()) / FAR;
      place = FAR;
    }
    HoldOut row =
        new HoldOut(
            screws.stream().map(ScrewDemand::at).toList(),
            screws.stream().map(screw -> screw.capacity().orElse(0)).toList());
    return pull * Math.max(1, Math.abs(place)) < NOTHING ? LetGo.MOST : row.group(place) / pull;
  }
}
