package org.bonewright.measures.hold;

import org.bonewright.bone.Dimension;
import org.bonewright.casefile.ScrewRow;

/**
 * How many cortices a screw crosses.
 *
 * <p>As stated; else both where the tip is stated to reach the far cortex. A conventional screw in
 * the shaft of which neither is stated is taken to cross both, a locking screw one or both. A screw
 * whose tip falls short of the far cortex crosses one at most, whatever else is stated.
 */
final class ScrewCortices {

  private ScrewCortices() {}

  static Dimension of(ScrewRow row) {
    Dimension said = said(row);
    if (row.tipBeyondMm().isEmpty() || row.tipBeyondMm().get().min() >= 0) {
      return said;
    }
    boolean certainlyShort = row.tipBeyondMm().get().max() < 0;
    return new Dimension(
        Math.min(said.min(), 1),
        certainlyShort ? Math.min(said.max(), 1) : said.max(),
        said.assumed(),
        "");
  }

  private static Dimension said(ScrewRow row) {
    if (row.cortices().isPresent()) {
      return Dimension.stated(row.cortices().get(), "");
    }
    if (row.tipBeyondMm().isPresent()) {
      return new Dimension(2, 2, false, "");
    }
    return row.type() == ScrewRow.Type.LOCKING
        ? Dimension.assumed(1, 2, "")
        : Dimension.assumed(2, 2, "conventional screws taken as crossing both cortices");
  }

  /** Return whether the file says that the screw holds in one cortex, or none, as it was meant. */
  static boolean meantForOne(ScrewRow row) {
    return row.cortices().map(cortices -> cortices.max() < 2).orElse(false);
  }
}
