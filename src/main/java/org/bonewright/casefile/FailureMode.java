package org.bonewright.casefile;

/** How a fixation failed, in the trade's words. */
public enum FailureMode {
  /** Conventional screws backed out one after another. */
  SCREWS_PULLED_OUT_IN_SEQUENCE,
  /** A locked plate came off with all its screws. */
  PLATE_PULLED_OFF_AS_BLOCK,
  PLATE_BROKEN_AT_EMPTY_HOLE,
  PLATE_BROKEN_AT_FILLED_HOLE,
  PLATE_BENT,
  SCREW_BROKEN,
  BOLT_BROKEN,
  BOLT_BACKED_OUT,
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
  DEFORMITY
}
