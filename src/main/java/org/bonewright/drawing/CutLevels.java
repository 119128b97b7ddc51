package org.bonewright.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Cuts;
import org.bonewright.drawing.words.Standing;

/** Where bone was cut out. */
final class CutLevels {

  private CutLevels() {}

  /** Return where the ends of each cut met, as it reads now. */
  static Map<Cuts.Cut, Dimension> of(Standing standing) {
    Map<Cuts.Cut, Dimension> levels = new LinkedHashMap<>();
    if (!standing.levels().fromLandmark()) {
      return levels;
    }
    Cuts cuts = standing.scene().ledger().cuts();
    int rounds = standing.scene().ledger().rounds();
    List<Cuts.Cut> all = cuts.before(rounds);
    for (Cuts.Cut cut : all) {
      Dimension level = cut.from();
      for (Cuts.Cut before : all) {
        if (before.round() == cut.round() && before.to().max() <= cut.from().min()) {
          level = level.minus(before.closed());
        }
      }
      cuts.moved(level, cut.round(), rounds - 1).ifPresent(now -> levels.put(cut, now));
    }
    return levels;
  }
}
