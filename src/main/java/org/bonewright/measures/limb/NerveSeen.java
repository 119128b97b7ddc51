package org.bonewright.measures.limb;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.NerveHandling;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the nerve at risk is laid open to view. */
final class NerveSeen implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nerve-seen",
        "Nerve seen",
        Definition.yesOrNo(),
        "as stated; not in a plan: no",
        List.of("operations/nerve/seen"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Answer> seen = scene.operation().nerve().flatMap(NerveHandling::seen);
    if (seen.isPresent() && seen.get() != Answer.UNKNOWN) {
      return Reading.word(seen.get() == Answer.YES ? "yes" : "no", "as stated");
    }
    return seen.isEmpty() && scene.subject().planned()
        ? Reading.word("no", "not planned")
        : Reading.unknown(scene.missing("nerve/seen", "Was the nerve at risk seen?"));
  }
}
