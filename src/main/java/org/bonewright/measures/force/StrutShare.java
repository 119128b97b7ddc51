package org.bonewright.measures.force;

import java.util.Comparator;
import java.util.List;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.StrutCut;
import org.bonewright.mechanics.construct.Load;

/**
 * How much of the bending at the line a strut in the canal takes over: the moment in the strut
 * itself, about the axis of the moment of the load, over that moment. What is left is carried by
 * plates, which bend and pull at their distance from the bone, and by ends that meet.
 */
final class StrutShare {

  private static final double PERCENT = 100;

  private StrutShare() {}

  /** Return the percentage, 0 to 100, under the load that bends most. */
  static double of(List<Borne> borne) {
    return borne.stream()
        .map(Borne::answer)
        .max(Comparator.comparingDouble(answer -> bending(answer.load())))
        .map(StrutShare::of)
        .orElse(0.0);
  }

  /** Return the percentage, 0 to 100; 0 where no strut crosses the line, or nothing bends. */
  static double of(LoadAnswer answer) {
    Load load = answer.load();
    double moment = bending(load) * answer.reached();
    if (moment <= 0) {
      return 0;
    }
    return answer
        .strut()
        .map(cut -> PERCENT * along(cut, load) / moment)
        .map(percent -> Math.max(0, Math.min(PERCENT, percent)))
        .orElse(0.0);
  }

  private static double bending(Load load) {
    return Math.hypot(load.bendingX(), load.bendingY());
  }

  private static double along(StrutCut cut, Load load) {
    return (cut.bendingX() * load.bendingX() + cut.bendingY() * load.bendingY()) / bending(load);
  }
}
