package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.bone.Dimension;

/** The limits of a card as they hold in some worlds. */
final class LimitsHere {

  private LimitsHere() {}

  /**
   * Return each limit that holds in any of these worlds, from its smallest to its largest value.
   */
  static Map<String, Dimension> of(Card card, List<World> worlds) {
    Map<String, Dimension> limits = new TreeMap<>();
    for (String name : card.limits().keySet()) {
      double min = Double.POSITIVE_INFINITY;
      double max = Double.NEGATIVE_INFINITY;
      for (World world : worlds) {
        Double value = world.limit(name);
        if (value != null) {
          min = Math.min(min, value);
          max = Math.max(max, value);
        }
      }
      if (min <= max) {
        limits.put(name, new Dimension(min, max, false, name));
      }
    }
    return limits;
  }
}
