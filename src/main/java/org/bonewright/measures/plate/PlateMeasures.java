package org.bonewright.measures.plate;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of plates. */
public final class PlateMeasures {

  private PlateMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new BrokeAtEmptyHole(),
        new HolesOverLine(HolesOverLine.Count.OPEN),
        new HolesOverLine(HolesOverLine.Count.SCREW_IN_ZONE),
        new HolesOverLine(HolesOverLine.Count.SCREW_FREE),
        new OpenHoleClearance(),
        new PlateLength(),
        new PlateSpanRatio(),
        new PlateStandOff());
  }
}
