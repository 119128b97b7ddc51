package org.bonewright.casefile;

import java.util.EnumSet;
import java.util.Set;

/**
 * How a fixation failed, in the trade's words. Three of them leave open which of two it was; old
 * notes often tell no more.
 */
public enum FailureMode {
  /** Screws came out; whether one after another or all at once is not told. */
  SCREWS_PULLED_OUT,
  /** Conventional screws backed out one after another. */
  SCREWS_PULLED_OUT_IN_SEQUENCE,
  /** A locked plate came off with all its screws. */
  PLATE_PULLED_OFF_AS_BLOCK,
  /** The plate broke; whether at an empty hole or a filled one is not told. */
  PLATE_BROKEN,
  PLATE_BROKEN_AT_EMPTY_HOLE,
  PLATE_BROKEN_AT_FILLED_HOLE,
  PLATE_BENT,
  SCREW_BROKEN,
  BOLT_BROKEN,
  BOLT_BACKED_OUT,
  /** The nail broke; at which level is not told. */
  NAIL_BROKEN,
  NAIL_BROKEN_AT_BOLT_HOLE,
  NAIL_BROKEN_MID_SHAFT,
  CERCLAGE_CUT_THROUGH,
  STRUT_RESORBED,
  /** Fixator pins loose with lysis. */
  PINS_LOOSE,
  /** Every screw lucent, the plate whole. */
  ALL_SCREWS_LUCENT,
  FRACTURE_AT_IMPLANT_END,
  /** No union, metal whole, no callus. */
  NO_UNION_METAL_INTACT,
  /** No union, metal whole, abundant callus. */
  CALLUS_LINE_OPEN,
  INFECTION,
  DEFORMITY;

  /** Return what it may have been: itself alone, or the two that it leaves open. */
  public Set<FailureMode> possible() {
    return switch (this) {
      case SCREWS_PULLED_OUT ->
          EnumSet.of(SCREWS_PULLED_OUT_IN_SEQUENCE, PLATE_PULLED_OFF_AS_BLOCK);
      case PLATE_BROKEN -> EnumSet.of(PLATE_BROKEN_AT_EMPTY_HOLE, PLATE_BROKEN_AT_FILLED_HOLE);
      case NAIL_BROKEN -> EnumSet.of(NAIL_BROKEN_AT_BOLT_HOLE, NAIL_BROKEN_MID_SHAFT);
      default -> EnumSet.of(this);
    };
  }

  /** Return whether it is this mode, or one of the two that this mode leaves open. */
  public boolean isA(FailureMode mode) {
    return mode.possible().containsAll(possible());
  }

  /** Return whether it is one mode, and not one of two. */
  public boolean isExact() {
    return possible().contains(this);
  }
}
