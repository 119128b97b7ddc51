package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How steep a simple line is. */
final class LineObliquity implements Measure {

  /** A line counts as oblique from here, in degrees from straight across. */
  private static final double OBLIQUE = 30;

  /** Angles are read off a film in whole degrees. */
  private static final double LAST_TRANSVERSE = 29;

  private static final double UPRIGHT = 90;

  @Override
  public Definition definition() {
    return new Definition(
        "line-obliquity",
        "Steepness of the line",
        Definition.degrees(),
        "as stated, in degrees from straight across; where it is not, at most 29 for a transverse"
            + " line, 30 to 90 for an oblique or spiral one. None for patterns of more than one line,"
            + " and where the whole zone is cut out",
        List.of(
            "injury/obliquityDeg", "injury/pattern", "findings/pattern", "operations/resection"),
        "30 degrees: usual classification of shaft fractures");
  }

  @Override
  public Reading take(Scene scene) {
    if (WholeZoneCut.certain(scene)) {
      return new Reading.None("the zone is cut out, two ends meet");
    }
    Injury injury = scene.subject().caseFile().injury();
    Optional<Injury.Pattern> now = scene.subject().latest(Finding::pattern).or(injury::pattern);
    if (now.isEmpty()) {
      return Reading.unknown(StatedPattern.missing(scene));
    }
    MissingFact missing =
        scene.missingInCase(
            "injury/obliquityDeg", "How steep is the line, in degrees from straight across?");
    Optional<Quantity> stated = injury.obliquityDeg().filter(angle -> now.equals(injury.pattern()));
    return switch (now.get()) {
      case WEDGE, MULTIFRAGMENTARY, SEGMENTAL, SEGMENTAL_DEFECT ->
          new Reading.None("more than one line");
      case TRANSVERSE -> reading(stated, 0, LAST_TRANSVERSE, "transverse", missing);
      case OBLIQUE, SPIRAL -> reading(stated, OBLIQUE, UPRIGHT, "oblique or spiral", missing);
    };
  }

  private static Reading reading(
      Optional<Quantity> stated, double min, double max, String word, MissingFact missing) {
    return stated
        .map(angle -> Reading.number(Dimension.stated(angle, ""), "as stated", missing))
        .orElseGet(() -> Reading.number(Dimension.assumed(min, max, ""), word, missing));
  }
}
