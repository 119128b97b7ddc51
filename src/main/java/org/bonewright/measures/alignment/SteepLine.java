package org.bonewright.measures.alignment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Injury;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Resection;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;
import org.bonewright.measures.line.WholeZoneCut;

/** How steep a line is that nothing keeps from sliding. */
final class SteepLine implements Measure {

  private static final double LEAST_OBLIQUE = 30;
  private static final double STEEPEST = 90;

  @Override
  public Definition definition() {
    return new Definition(
        "steep-line-free",
        "Steepness of a line free to slide",
        Definition.degrees(),
        "degrees from straight across, of an oblique or spiral line; none for other patterns, where"
            + " the whole zone is cut out, and where a lag screw, a nail or a second plate holds the"
            + " line",
        List.of(
            "injury/obliquityDeg",
            "injury/pattern",
            "findings/pattern",
            "operations/fixation",
            "operations/resection"),
        "Pauwels, from memory; what holds a steep line is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (WholeZoneCut.certain(scene)) {
      return new Reading.None("the line is cut out");
    }
    if (!scene.construct().of(LagScrew.class).isEmpty()
        || !scene.construct().of(Nail.class).isEmpty()
        || scene.certainly("two-plates", "yes")) {
      return new Reading.None("a lag screw, nail or second plate holds it");
    }
    Injury injury = scene.subject().caseFile().injury();
    Optional<Injury.Pattern> pattern = scene.subject().latest(Finding::pattern).or(injury::pattern);
    if (pattern.isEmpty()) {
      return Reading.unknown(
          scene.missingInCase(
              "injury/pattern",
              "What was the pattern: transverse, oblique, spiral, wedge or multifragmentary?"));
    }
    return switch (pattern.get()) {
      case OBLIQUE, SPIRAL -> steep(scene, injury, pattern.get());
      case TRANSVERSE, WEDGE, MULTIFRAGMENTARY, SEGMENTAL, SEGMENTAL_DEFECT ->
          new Reading.None(Words.of(pattern.get()));
    };
  }

  /** The angle is that of the injury; it tells nothing of another line that was found later. */
  private static Reading steep(Scene scene, Injury injury, Injury.Pattern pattern) {
    Optional<Quantity> stated =
        injury.obliquityDeg().filter(angle -> injury.pattern().equals(Optional.of(pattern)));
    List<MissingFact> missing = new ArrayList<>();
    double least = stated.map(Quantity::min).orElse(LEAST_OBLIQUE);
    double most = stated.map(Quantity::max).orElse(STEEPEST);
    boolean mayBeHeld = !scene.construct().known() || mayBeCut(scene);
    if (mayBeHeld) {
      missing.add(
          scene.missing(
              "fixation", "Is the line cut out, or held by a lag screw, nail or second plate?"));
    }
    if (least < most) {
      missing.add(
          scene.missingInCase(
              "injury/obliquityDeg", "How steep is the line, in degrees from straight across?"));
    }
    return Reading.number(
        new Dimension(mayBeHeld ? 0 : least, most, false, ""),
        Words.of(pattern) + " line",
        missing.toArray(MissingFact[]::new));
  }

  private static boolean mayBeCut(Scene scene) {
    List<Optional<List<Resection>>> cuts =
        scene.subject().steps().stream().map(Operation::resection).toList();
    boolean cut = cuts.stream().flatMap(Optional::stream).anyMatch(pieces -> !pieces.isEmpty());
    return cuts.stream().anyMatch(Optional::isEmpty) || (cut && !WholeZoneCut.impossible(scene));
  }
}
