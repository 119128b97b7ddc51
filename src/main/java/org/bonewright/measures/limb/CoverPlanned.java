package org.bonewright.measures.limb;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.InfectionCare;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether cover by skin or a flap is part of it. */
final class CoverPlanned implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "cover-settled",
        "Cover by soft tissue settled",
        Definition.yesOrNo(),
        "yes when a stage deals with soft-tissue cover; not in a plan: no",
        List.of("operations/infectionCare/softTissueCover"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Answer> said =
        scene.subject().steps().stream()
            .flatMap(step -> step.infectionCare().flatMap(InfectionCare::softTissueCover).stream())
            .toList();
    if (said.contains(Answer.YES)) {
      return Reading.word("yes", "as stated");
    }
    Optional<Answer> open = said.stream().filter(answer -> answer == Answer.UNKNOWN).findFirst();
    boolean untold = said.size() < scene.subject().steps().size() && !scene.subject().planned();
    return open.isPresent() || untold
        ? Reading.unknown(
            scene.missing("infectionCare/softTissueCover", "Was soft-tissue cover dealt with?"))
        : Reading.word("no", "not named");
  }
}
