package org.bonewright.measures.graft;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.InfectionCare;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether dead bone, a strut or allograft, is put in, and whether a debridement came first. */
final class StructuralGraftStage implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "structural-graft-stage",
        "Stage of strut or allograft",
        Definition.words("no", "first", "later"),
        "first when a strut or allograft goes in before or together with the first debridement of"
            + " this course; later when an earlier stage debrided the site; a strut with its own"
            + " blood supply does not count",
        List.of(
            "operations/fixation/origin",
            "operations/biology/kind",
            "operations/infectionCare/debridement",
            "operations/outcome/result"),
        "staging after Metsemakers et al. 2020; bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> course = Spacers.course(scene);
    int own = course.size() - scene.subject().steps().size();
    boolean cleared = false;
    boolean maybeCleared = false;
    for (int i = 0; i < course.size(); i++) {
      Operation step = course.get(i);
      if (i >= own && putsDeadBone(step)) {
        return cleared
            ? Reading.word("later", step.id() + ", after debridement in an earlier stage")
            : maybeCleared
                ? Reading.words(
                    Set.of("first", "later"),
                    Kind.FACT,
                    step.id() + "; debridement before it is not stated",
                    scene.missing(
                        "infectionCare/debridement", "Was the site debrided in an earlier stage?"))
                : Reading.word("first", step.id());
      }
      Optional<Answer> debrided = step.infectionCare().flatMap(InfectionCare::debridement);
      cleared |= debrided.equals(Optional.of(Answer.YES));
      boolean open = debrided.isEmpty() && (i < own || !scene.subject().planned());
      maybeCleared |= open || debrided.equals(Optional.of(Answer.UNKNOWN));
    }
    return told(scene.subject().steps())
        ? Reading.word("no", "neither strut nor allograft")
        : Reading.unknown(
            scene.missing("fixation", "Was a strut or allograft put in, and in which stage?"));
  }

  private static boolean told(List<Operation> steps) {
    return steps.stream().allMatch(s -> s.fixation().isPresent() && s.biology().isPresent());
  }

  private static boolean putsDeadBone(Operation step) {
    boolean strut =
        Biology.struts(List.of(step)).stream()
            .anyMatch(s -> !s.origin().equals(Optional.of(Strut.Origin.AUTOGRAFT_VASCULARISED)));
    return strut || Biology.of(List.of(step)).has(Graft.Kind.ALLOGRAFT);
  }
}
