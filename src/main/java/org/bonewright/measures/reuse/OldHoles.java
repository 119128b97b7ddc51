package org.bonewright.measures.reuse;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether earlier operations drilled the bone; all holes, or those of plates and fixators. */
final class OldHoles implements Measure {

  private static final Set<Track.Kind> OF_PLATE_OR_FIXATOR =
      EnumSet.of(Track.Kind.PLATE_SCREW, Track.Kind.LOCKING_PLATE_SCREW, Track.Kind.PIN);

  private final boolean all;

  private OldHoles(boolean all) {
    this.all = all;
  }

  static Measure ofAnything() {
    return new OldHoles(true);
  }

  static Measure ofPlateOrFixator() {
    return new OldHoles(false);
  }

  @Override
  public Definition definition() {
    return all
        ? new Definition(
            "old-holes",
            "Old holes in the bone",
            Definition.yesOrNo(),
            "yes when an earlier operation drilled a screw, bolt or pin that has not been cut out"
                + " with its bone, or may have left a piece of metal",
            List.of("operations/fixation", "operations/resection"),
            "bookkeeping")
        : new Definition(
            "plate-or-fixator-before",
            "A plate or fixator before",
            Definition.yesOrNo(),
            "yes when holes of an earlier plate or fixator are in the bone",
            List.of("operations/fixation", "operations/resection"),
            "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    long found =
        Holes.in(scene).old().stream()
            .filter(hole -> all || OF_PLATE_OR_FIXATOR.contains(hole.track().kind()))
            .count();
    if (found > 0) {
      return Reading.word("yes", found + " holes");
    }
    if (all && !HoleMap.pieces(scene).isEmpty()) {
      return Reading.word("yes", "metal left inside");
    }
    List<MissingFact> untold =
        scene.subject().before().stream()
            .filter(this::mayHaveDrilled)
            .map(
                operation ->
                    scene.missingInCase(
                        operation.id() + "/fixation",
                        "Which screws, bolts or pins did " + operation.id() + " put in?"))
            .toList();
    return untold.isEmpty()
        ? Reading.word("no", "none")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "not every earlier operation is told",
            untold.toArray(MissingFact[]::new));
  }

  private boolean mayHaveDrilled(Operation operation) {
    return operation.fixation().map(put -> put.stream().anyMatch(this::untold)).orElse(true);
  }

  private boolean untold(Implant implant) {
    return (all || !(implant instanceof Nail)) && implant.untoldScrews().isPresent();
  }
}
