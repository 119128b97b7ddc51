package org.bonewright.measures.history;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.casefile.FailureMode;
import org.bonewright.measures.Words;

/** Classes of factors by which a fixation can fail, and which a revision can change. */
public enum Factor {
  CONCEPT,
  HOLD,
  LENGTH,
  /** Strength of the implant itself. */
  IMPLANT,
  GAP,
  NAIL,
  BIOLOGY,
  INFECTION,
  ALIGNMENT,
  LOAD;

  /**
   * Return the factors that a failure mode points to: one set, or one for each of the two modes
   * that it leaves open where they point to different factors.
   */
  public static Set<Set<Factor>> mayBe(FailureMode mode) {
    return mode.possible().stream()
        .map(Factor::of)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * Return the factors that a failure mode points to.
   *
   * <p>After the textbook reading of failures (AO Principles, from memory): a plate that breaks at
   * an empty hole points to gap and length, screws that back out in sequence to hold and length, a
   * plate that comes off as a block to hold, and so on.
   *
   * @throws IllegalArgumentException if the mode leaves open which of two it was
   */
  static Set<Factor> of(FailureMode mode) {
    return switch (mode) {
      case PLATE_BROKEN_AT_EMPTY_HOLE -> EnumSet.of(GAP, LENGTH);
      case PLATE_BROKEN_AT_FILLED_HOLE -> EnumSet.of(GAP, LENGTH, LOAD);
      case PLATE_BENT -> EnumSet.of(IMPLANT, LENGTH, LOAD);
      case SCREWS_PULLED_OUT_IN_SEQUENCE -> EnumSet.of(HOLD, LENGTH);
      case PLATE_PULLED_OFF_AS_BLOCK -> EnumSet.of(HOLD);
      case SCREW_BROKEN -> EnumSet.of(GAP, HOLD);
      case BOLT_BROKEN, BOLT_BACKED_OUT -> EnumSet.of(NAIL, CONCEPT);
      case NAIL_BROKEN_AT_BOLT_HOLE, NAIL_BROKEN_MID_SHAFT -> EnumSet.of(NAIL, GAP, LOAD);
      case CERCLAGE_CUT_THROUGH -> EnumSet.of(HOLD);
      case STRUT_RESORBED -> EnumSet.of(INFECTION, BIOLOGY, GAP);
      case PINS_LOOSE -> EnumSet.of(Factor.INFECTION, HOLD, IMPLANT);
      case ALL_SCREWS_LUCENT, INFECTION -> EnumSet.of(Factor.INFECTION);
      case FRACTURE_AT_IMPLANT_END -> EnumSet.of(LENGTH, HOLD);
      case NO_UNION_METAL_INTACT -> EnumSet.of(BIOLOGY, GAP, CONCEPT);
      case CALLUS_LINE_OPEN -> EnumSet.of(CONCEPT, HOLD, LENGTH, NAIL);
      case DEFORMITY -> EnumSet.of(ALIGNMENT, HOLD);
      case SCREWS_PULLED_OUT, PLATE_BROKEN, NAIL_BROKEN ->
          throw new IllegalArgumentException("two modes: " + mode);
    };
  }

  /** Return the word by which cards and texts name the factor. */
  public String word() {
    return Words.of(this);
  }
}
