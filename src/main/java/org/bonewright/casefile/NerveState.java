package org.bonewright.casefile;

/** The function of one nerve. */
public record NerveState(
    @Meaning("Which nerve.") Nerve name, @Meaning("How it works.") Function function) {

  /** Nerves at risk in shaft surgery. */
  public enum Nerve {
    RADIAL,
    MEDIAN,
    ULNAR,
    SCIATIC,
    PERONEAL,
    TIBIAL,
    OTHER
  }

  /** How a nerve works. */
  public enum Function {
    INTACT,
    PARTIAL,
    COMPLETE_PALSY,
    RECOVERING,
    NOT_EXAMINED
  }
}
