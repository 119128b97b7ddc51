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
        new CorticesPerPlate(),
        new EndHolesFilled(),
        new FarContact(),
        new FarCortexRebuilt(),
        new HolesOverLine(HolesOverLine.Count.OPEN),
        new HolesOverLine(HolesOverLine.Count.SCREW_IN_ZONE),
        new HolesOverLine(HolesOverLine.Count.SCREW_FREE),
        new MetalsMixed(),
        new OpenHoleClearance(),
        new OuterAtZone(),
        new OverlapFixed(),
        new PlateAngle(),
        new PlateEndStagger(),
        new PlateEndToRiser(),
        new PlateFamilyFailedBefore(),
        new PlateFamilyFit(),
        new PlateLength(),
        new PlateSpanRatio(),
        new PlateStandOff(),
        new PlateScrewDensity(),
        new ReachBeyondZone(),
        new ScrewSpread(),
        new ScrewSystem(),
        new ScrewToLine(),
        new ScrewsOutsideZone(),
        new ShortFragment(),
        new ShortFragmentAnswer(),
        new StrippedPercent(),
        new TensionSidePlate(),
        new TwoPlates());
  }
}
