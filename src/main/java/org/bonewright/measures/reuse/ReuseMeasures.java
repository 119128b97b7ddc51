package org.bonewright.measures.reuse;

import java.util.List;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Measure;

/** The measures of bone that earlier operations have used. */
public final class ReuseMeasures {

  private ReuseMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new CerclageHolds(),
        OldHoleCost.lost(),
        OldHoleCost.cortices(),
        OldHoleCost.lockingScrews(),
        ScrewsPerSide.clear(),
        ScrewsPerSide.fresh(),
        ScrewsPerSide.near(),
        new EngagedThread(),
        new HoleMap(),
        new HoleWeakening(),
        new HoleRow(),
        LockedPlate.onBothSides(),
        LockedPlate.withStrut(),
        new LongerThanBefore(),
        new NewImplant("nail", Nail.class),
        new NewImplant("plate", Plate.class),
        OldHoles.ofAnything(),
        OldHoles.ofPlateOrFixator(),
        new OpenHoles(OpenHoles.What.LEFT),
        new OpenHoles(OpenHoles.What.BEYOND),
        new OpenHoles(OpenHoles.What.IN_LINE),
        new OpenHoles(OpenHoles.What.RATIO_BEYOND),
        new OpenHoles(OpenHoles.What.RATIO_SPANNED),
        new OpenHoles(OpenHoles.What.TO_END),
        new Pieces(Pieces.What.FOUND),
        new Pieces(Pieces.What.UNDECIDED),
        new Pieces(Pieces.What.KEPT),
        new Pieces(Pieces.What.TO_SCREW),
        new ProtectedLoad(),
        new Rescue(Rescue.What.PLANNED),
        new Rescue(Rescue.What.STEP),
        new Rescue(Rescue.What.RATIO),
        new Rescue(Rescue.What.CORTEX),
        new SameSurface(),
        new ShareNearOldHoles(),
        new SideWithoutScrew(),
        Totals.holes(),
        Totals.shortening());
  }
}
