package org.bonewright.measures.line;

import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Injury;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * The pattern as the file names it, before anything is cut out: that of the last findings that name
 * one, else that of the injury.
 */
public final class StatedPattern {

  private StatedPattern() {}

  /** Return the pattern that the file names, if it names one. */
  public static Optional<Injury.Pattern> of(Scene scene) {
    return scene
        .subject()
        .latest(Finding::pattern)
        .or(() -> scene.subject().caseFile().injury().pattern());
  }

  /** Return what to ask where the file names none. */
  public static MissingFact missing(Scene scene) {
    return scene.missingInCase(
        "injury/pattern",
        "What was the pattern: transverse, oblique, spiral, wedge or multifragmentary?");
  }
}
