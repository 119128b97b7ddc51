package org.bonewright.measures.graft;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Companion;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the bone beside, fibula or other forearm bone, gives way to the shortening. */
final class CompanionShortened implements Measure {

  private static final Set<BoneName> PAIRED =
      EnumSet.of(BoneName.TIBIA, BoneName.RADIUS, BoneName.ULNA);

  @Override
  public Definition definition() {
    return new Definition(
        "companion-shortened",
        "Bone beside shortened too",
        Definition.words("yes", "no", "single"),
        "single for humerus, femur and clavicle. Yes when the fibula or the other forearm bone is"
            + " cut or shortened, in this operation or before; a broken or resected fibula counts"
            + " too. Not stated in a plan: by the state of the bone beside",
        List.of("operations/companionCut", "companion/state", "companion/operations/resection"),
        "common practice, no source");
  }

  @Override
  public Reading take(Scene scene) {
    if (!PAIRED.contains(scene.boneName())) {
      return Reading.word("single", "no bone beside");
    }
    if (said(scene, Answer.YES)) {
      return Reading.word("yes", "cut or shortened");
    }
    boolean open =
        scene.subject().steps().stream()
            .map(Operation::companionCut)
            .anyMatch(
                answer ->
                    answer.equals(Optional.of(Answer.UNKNOWN))
                        || (answer.isEmpty() && !scene.subject().planned()));
    Optional<Companion> beside = scene.subject().caseFile().companion();
    boolean resected =
        beside
            .map(
                c ->
                    c.operations().stream()
                        .filter(o -> o.day().map(scene.subject()::knows).orElse(false))
                        .anyMatch(o -> !o.resection().orElse(List.of()).isEmpty()))
            .orElse(false);
    if (resected) {
      return Reading.word("yes", "resected in an operation of its own");
    }
    boolean neverHurt = beside.map(c -> c.state() == Companion.State.INTACT).orElse(false);
    return beside.isEmpty() || (open && !neverHurt)
        ? asked(scene)
        : byState(scene, beside.get().state());
  }

  private static boolean said(Scene scene, Answer answer) {
    return scene.subject().upToHere().stream()
        .anyMatch(operation -> operation.companionCut().equals(Optional.of(answer)));
  }

  private static Reading byState(Scene scene, Companion.State state) {
    boolean fibula = scene.boneName() == BoneName.TIBIA;
    return switch (state) {
      case RESECTED -> Reading.word("yes", "resected");
      case FRACTURED, NONUNION ->
          fibula ? Reading.word("yes", "broken") : Reading.word("no", "broken, not shortened");
      case INTACT, FIXED, UNITED -> Reading.word("no", "whole, and not cut");
      case UNKNOWN -> asked(scene);
    };
  }

  private static Reading asked(Scene scene) {
    return Reading.unknown(
        scene.missing(
            "companionCut",
            scene.boneName() == BoneName.TIBIA
                ? "Is the fibula whole, and is it cut too?"
                : "Is the other forearm bone whole, and is it shortened too?"));
  }
}
