package org.bonewright.measures.plate;

import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Words;

/** How a size of plate suits a bone; the best first. After AO Principles, from memory. */
enum PlateFit {
  /** The usual size. */
  RIGHT,
  /** Heavier than usual; the bone must be wide enough. */
  HEAVY,
  /** Does for a fresh fracture in good bone only. */
  LIGHT,
  /** Too weak. */
  SOFT,
  /** A one-third tubular plate on humerus or femur. */
  TUBULAR;

  /**
   * Return how one plate suits a bone.
   *
   * @param brokenUp whether the zone is multifragmentary or a defect: a reconstruction plate does
   *     for the clavicle only where it is neither
   */
  static PlateFit of(BoneName bone, Plate.Family family, boolean brokenUp) {
    return switch (bone) {
      case FEMUR -> ofFemur(family);
      case TIBIA -> ofTibia(family);
      case HUMERUS -> ofHumerus(family);
      case RADIUS, ULNA -> ofForearm(family);
      case CLAVICLE -> ofClavicle(family, brokenUp);
    };
  }

  private static PlateFit ofFemur(Plate.Family family) {
    return switch (family) {
      case LARGE_FRAGMENT_BROAD, LARGE_FRAGMENT_BROAD_LOCKING -> RIGHT;
      case ONE_THIRD_TUBULAR, SEMI_TUBULAR -> TUBULAR;
      default -> SOFT;
    };
  }

  private static PlateFit ofTibia(Plate.Family family) {
    return isLarge(family) ? RIGHT : SOFT;
  }

  private static PlateFit ofHumerus(Plate.Family family) {
    return switch (family) {
      case LARGE_FRAGMENT_NARROW, LARGE_FRAGMENT_NARROW_LOCKING -> RIGHT;
      case LARGE_FRAGMENT_BROAD, LARGE_FRAGMENT_BROAD_LOCKING -> HEAVY;
      case SMALL_FRAGMENT, SMALL_FRAGMENT_LOCKING -> LIGHT;
      case ONE_THIRD_TUBULAR, SEMI_TUBULAR -> TUBULAR;
      default -> SOFT;
    };
  }

  private static PlateFit ofForearm(Plate.Family family) {
    return isLarge(family) ? HEAVY : isSmall(family) ? RIGHT : SOFT;
  }

  private static PlateFit ofClavicle(Plate.Family family, boolean brokenUp) {
    return switch (family) {
      case SMALL_FRAGMENT, SMALL_FRAGMENT_LOCKING, SHAFT_STRENGTH_2_7 -> RIGHT;
      case RECONSTRUCTION -> brokenUp ? SOFT : RIGHT;
      case ONE_THIRD_TUBULAR, SEMI_TUBULAR -> SOFT;
      default -> HEAVY;
    };
  }

  /** Return whether two plates of this size at a right angle do for the bone. */
  static boolean doesInPairs(BoneName bone, Plate.Family family) {
    return switch (bone) {
      case FEMUR -> isLarge(family);
      case TIBIA, HUMERUS -> isSmall(family);
      default -> false;
    };
  }

  private static boolean isLarge(Plate.Family family) {
    return switch (family) {
      case LARGE_FRAGMENT_BROAD,
          LARGE_FRAGMENT_BROAD_LOCKING,
          LARGE_FRAGMENT_NARROW,
          LARGE_FRAGMENT_NARROW_LOCKING ->
          true;
      default -> false;
    };
  }

  private static boolean isSmall(Plate.Family family) {
    return family == Plate.Family.SMALL_FRAGMENT || family == Plate.Family.SMALL_FRAGMENT_LOCKING;
  }

  /** Return the word that stands for it in a rule. */
  String word() {
    return Words.written(this);
  }
}
