package org.bonewright.principles;

/**
 * One step by which a severity was changed.
 *
 * @param step why
 * @param from severity before
 * @param to severity after
 */
public record SeverityStep(Decisions.Step step, Severity from, Severity to) {

  /** Return the step in a few words: why, and what the severity would be without it. */
  public String inWords() {
    return step == Decisions.Step.SITE
        ? "set by this site, published as " + from.word()
        : why() + ", else " + from.word();
  }

  /** Return the reason in a few words. */
  public String why() {
    return switch (step) {
      case SITE -> "set by this site";
      case BONE -> "this bone";
      case OUTCOME -> "the fracture united";
      case DISPUTE -> "the literature disagrees";
      case REPEAT -> "unmet before";
    };
  }
}
