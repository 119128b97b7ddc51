package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether the line runs so nearly across the bone that pressing along the axis closes it. */
final class ShortLine implements Measure {

  private static final double STEEPEST_DEG = 45;

  @Override
  public Definition definition() {
    return new Definition(
        "short-line",
        "Transverse or short oblique line",
        Definition.yesOrNo(),
        "yes for a transverse line, for an oblique one of at most 45 degrees, and where the whole"
            + " zone is cut out so that two cut ends meet; no for every other pattern",
        List.of(
            "findings/pattern", "injury/pattern", "injury/obliquityDeg", "operations/resection"),
        "45 degrees for short oblique: common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    if (WholeZoneCut.certain(scene)) {
      return Reading.word("yes", "the zone is cut out, two ends meet");
    }
    Injury injury = scene.subject().caseFile().injury();
    Optional<Injury.Pattern> pattern = scene.subject().latest(Finding::pattern).or(injury::pattern);
    if (pattern.isEmpty()) {
      return Reading.unknown(StatedPattern.missing(scene));
    }
    return switch (pattern.get()) {
      case TRANSVERSE -> Reading.word("yes", Words.of(pattern.get()));
      case OBLIQUE -> oblique(scene, injury.obliquityDeg());
      case SPIRAL, WEDGE, MULTIFRAGMENTARY, SEGMENTAL, SEGMENTAL_DEFECT ->
          Reading.word("no", Words.of(pattern.get()));
    };
  }

  private static Reading oblique(Scene scene, Optional<Quantity> angle) {
    MissingFact missing =
        scene.missingInCase(
            "injury/obliquityDeg", "How steep is the line, in degrees from straight across?");
    if (angle.isEmpty()) {
      return Reading.unknown(missing);
    }
    boolean may = angle.get().min() <= STEEPEST_DEG;
    boolean mayNot = angle.get().max() > STEEPEST_DEG;
    return Reading.words(
        may && mayNot ? Set.of("yes", "no") : Set.of(may ? "yes" : "no"),
        Kind.FACT,
        "oblique line",
        missing);
  }
}
