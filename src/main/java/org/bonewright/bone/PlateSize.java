package org.bonewright.bone;

import org.bonewright.casefile.Plate;

/**
 * Generic dimensions of a plate family in mm. All from memory; a length computed from them is meant
 * as ± 10 %.
 *
 * @param width width of the plate
 * @param thickness thickness of the plate
 * @param spacing distance between neighbouring holes
 * @param screw thread diameter of the usual screw
 * @param endOffset from the last hole to the end of the plate
 * @param locking whether the holes accept locking screws
 */
public record PlateSize(
    double width,
    double thickness,
    double spacing,
    double screw,
    double endOffset,
    boolean locking) {

  /** The thinnest and the thickest screw of any plate, mm; from memory. */
  public static final double THINNEST_SCREW = 2.7;

  public static final double THICKEST_SCREW = 6.5;

  /** Return the dimensions of a family. */
  public static PlateSize of(Plate.Family family) {
    return switch (family) {
      case LARGE_FRAGMENT_BROAD -> new PlateSize(16.0, 4.5, family.spacingMm(), 4.5, 8, false);
      case LARGE_FRAGMENT_BROAD_LOCKING ->
          new PlateSize(17.5, 5.2, family.spacingMm(), 5.0, 9, true);
      case LARGE_FRAGMENT_NARROW -> new PlateSize(12.0, 3.6, family.spacingMm(), 4.5, 8, false);
      case LARGE_FRAGMENT_NARROW_LOCKING ->
          new PlateSize(13.5, 4.6, family.spacingMm(), 5.0, 9, true);
      case SMALL_FRAGMENT -> new PlateSize(10.0, 3.0, family.spacingMm(), 3.5, 6.5, false);
      case SMALL_FRAGMENT_LOCKING -> new PlateSize(11.0, 3.3, family.spacingMm(), 3.5, 7, true);
      case RECONSTRUCTION -> new PlateSize(10.0, 2.7, family.spacingMm(), 3.5, 6, false);
      case ONE_THIRD_TUBULAR -> new PlateSize(9.0, 1.0, family.spacingMm(), 3.5, 6, false);
      case SEMI_TUBULAR -> new PlateSize(11.0, 1.0, family.spacingMm(), 4.5, 8, false);
      case SHAFT_STRENGTH_2_7 -> new PlateSize(8.0, 2.5, family.spacingMm(), 2.7, 5, false);
    };
  }
}
