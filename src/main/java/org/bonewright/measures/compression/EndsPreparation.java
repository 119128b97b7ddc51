package org.bonewright.measures.compression;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.EndPreparation;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far the bone ends were made fit to be put together. */
final class EndsPreparation implements Measure {

  private static final String PREPARED = "prepared";
  private static final String CANAL_CLOSED = "canal-closed";
  private static final String NOT_CUT_BACK = "not-cut-back";

  @Override
  public Definition definition() {
    return new Definition(
        "ends-preparation",
        "Preparation of the bone ends",
        Definition.words(PREPARED, CANAL_CLOSED, NOT_CUT_BACK),
        "prepared when the ends are cut back to bleeding bone and the canal is opened, in any step;"
            + " canal closed when only cut back; else not cut back. Not stated: a planned resection"
            + " is taken to reach bleeding bone, an operation that resects nothing cuts nothing"
            + " back, and a nail put in opens the canal. Not in a plan: no",
        List.of(
            "operations/endsPrepared/toBleedingBone",
            "operations/endsPrepared/canalOpened",
            "operations/resection",
            "operations/fixation"),
        "common practice, no source; what is taken for granted is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    boolean plan = scene.subject().planned();
    Doing cut = Doing.in(scene, step -> cutBack(step, plan));
    Doing canal = Doing.in(scene, EndsPreparation::canalOpened);
    Set<String> possible = new HashSet<>();
    List<MissingFact> missing = new ArrayList<>();
    if (cut != Doing.DONE) {
      possible.add(NOT_CUT_BACK);
    }
    if (cut != Doing.NOT_DONE && canal != Doing.DONE) {
      possible.add(CANAL_CLOSED);
    }
    if (cut != Doing.NOT_DONE && canal != Doing.NOT_DONE) {
      possible.add(PREPARED);
    }
    if (cut == Doing.UNKNOWN) {
      missing.add(
          scene.missing(
              "endsPrepared/toBleedingBone", "Were both ends cut back to bleeding bone?"));
    }
    if (cut != Doing.NOT_DONE && canal == Doing.UNKNOWN) {
      missing.add(scene.missing("endsPrepared/canalOpened", "Was the canal opened on both sides?"));
    }
    return Reading.words(
        possible,
        inferred(scene) ? Kind.ASSUMED : Kind.FACT,
        "cut back: " + inWords(cut) + "; canal opened: " + inWords(canal),
        missing.toArray(MissingFact[]::new));
  }

  private static Optional<Answer> cutBack(Operation step, boolean plan) {
    Optional<Answer> stated = step.endsPrepared().flatMap(EndPreparation::toBleedingBone);
    if (stated.isPresent() || step.resection().isEmpty()) {
      return stated;
    }
    return step.resection().get().isEmpty()
        ? Optional.of(Answer.NO)
        : Optional.of(plan ? Answer.YES : Answer.UNKNOWN);
  }

  private static Optional<Answer> canalOpened(Operation step) {
    boolean nailed =
        step.fixation().stream().flatMap(List::stream).anyMatch(Nail.class::isInstance);
    return step.endsPrepared()
        .flatMap(EndPreparation::canalOpened)
        .or(() -> nailed ? Optional.of(Answer.YES) : Optional.empty());
  }

  /** Whether a resection, or that there was none, is read as the answer. */
  private static boolean inferred(Scene scene) {
    return scene.subject().steps().stream()
        .filter(step -> step.endsPrepared().flatMap(EndPreparation::toBleedingBone).isEmpty())
        .flatMap(step -> step.resection().stream())
        .anyMatch(cut -> scene.subject().planned() != cut.isEmpty());
  }

  private static String inWords(Doing doing) {
    return switch (doing) {
      case DONE -> "yes";
      case NOT_DONE -> "no";
      case UNKNOWN -> "not known";
    };
  }
}
