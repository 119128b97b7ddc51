package org.bonewright.review;

/**
 * Something that ends automatic judgement and goes to a human at once.
 *
 * @param kind which of the things that are looked for
 * @param what what was recorded
 * @param since where and when, in words
 */
public record RedFlag(Kind kind, String what, String since) {

  /** Everything that is looked for. A test holds that each is found in some case. */
  public enum Kind {
    /** A sinus down to bone or implant. */
    SINUS,
    /** A wound broken down to bone or implant. */
    WOUND_BREAKDOWN,
    /** Pus. */
    PUS,
    /** Two samples that grew the same organism. */
    LIKE_SAMPLES,
    /** Histology that proves infection. */
    HISTOLOGY,
    /** An operation that failed by infection. */
    FAILED_BY_INFECTION,
    /** Fever. */
    FEVER,
    /** Redness, warmth, swelling or pain at the site. */
    LOCAL_SIGNS,
    /** Discharge from the wound. */
    DISCHARGE,
    /** An effusion of a joint beside the bone. */
    JOINT_EFFUSION,
    /** Dead bone apart from the rest. */
    SEQUESTRUM,
    /** A raised C-reactive protein that no operation explains. */
    RAISED_CRP,
    /** No pulse. */
    NO_PULSES,
    /** Open skin over the site. */
    OPEN_SKIN,
    /** A main vessel injured. */
    VESSEL,
    /** A compartment syndrome. */
    COMPARTMENT_SYNDROME,
    /** A complete palsy that the injury did not cause. */
    NEW_PALSY,
    /** A suspected tumour. */
    TUMOUR,
    /** Irradiated bone. */
    IRRADIATED,
    /** A skeleton that still grows. */
    STILL_GROWING,
    /** A pregnancy. */
    PREGNANCY,
    /** A proven allergy to an implant. */
    ALLERGY,
    /** An anticoagulant before an operation. */
    ANTICOAGULANT,
    /** Nobody looked for infection before a plan. */
    INFECTION_NOT_LOOKED_FOR
  }
}
