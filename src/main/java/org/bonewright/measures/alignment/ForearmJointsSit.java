package org.bonewright.measures.alignment;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.ForearmFit;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the joint at the wrist and the head of the radius sit well. */
final class ForearmJointsSit implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "forearm-joints-sit",
        "Wrist joint and head of the radius sit well",
        Definition.yesOrNo(),
        "no where one of the two is said not to; yes where both are said to",
        List.of(
            "operations/reduction/forearm/wristJointSits",
            "operations/reduction/forearm/radialHeadSits"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (!Beside.of(scene).pair()) {
      return new Reading.None("no forearm bone");
    }
    Optional<ForearmFit> fit = scene.reduction().flatMap(Reduction::forearm);
    Optional<Answer> wrist = fit.flatMap(ForearmFit::wristJointSits);
    Optional<Answer> head = fit.flatMap(ForearmFit::radialHeadSits);
    if (wrist.equals(Optional.of(Answer.NO)) || head.equals(Optional.of(Answer.NO))) {
      return Reading.word("no", "as stated");
    }
    return wrist.equals(Optional.of(Answer.YES)) && head.equals(Optional.of(Answer.YES))
        ? Reading.word("yes", "as stated")
        : Reading.unknown(
            scene.missingOfFixing(
                "reduction/forearm/wristJointSits",
                "Do the joint between radius and ulna at the wrist and the head of the radius sit"
                    + " well at the end?"));
  }
}
