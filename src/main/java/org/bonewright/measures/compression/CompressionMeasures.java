package org.bonewright.measures.compression;

import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of compression of the line. */
public final class CompressionMeasures {

  private CompressionMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    return List.of(
        new BoneReplaced(),
        new CompressionMethod(),
        new CompressionOrder(),
        new CompressionsLost(),
        new ConventionalStripped(),
        new EndsInDoubt(),
        new EndsPreparation(),
        new FragmentScrewOrder(),
        new GapBefore(),
        new GapBeforeRecorded(),
        new LinePressed(),
        new LockedBothSides(),
        new MixedFragment(),
        new PlateAlone(),
        new PrebendHeight(),
        new PressedByPlateAlone(),
        new ShorteningToClose(),
        new TravelToSpare());
  }
}
