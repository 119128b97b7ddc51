package org.bonewright.measures.limb;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.NerveHandling;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether it is written down which plate holes the nerve crosses. */
final class NerveHolesNoted implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nerve-holes-noted",
        "Plate holes under the nerve written down",
        Definition.yesOrNo(),
        "yes where the holes are named, or none is said to be crossed; not in a plan: no; none where"
            + " the operation puts in no plate",
        List.of("operations/nerve/holesCrossed", "operations/fixation"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.operation().nerve().flatMap(NerveHandling::holesCrossed).isPresent()) {
      return Reading.word("yes", "as stated");
    }
    Optional<List<Implant>> put = scene.operation().fixation();
    if (put.isPresent() && put.get().stream().noneMatch(Plate.class::isInstance)) {
      return new Reading.None("no plate is put in");
    }
    return scene.subject().planned()
        ? Reading.word("no", "not named")
        : Reading.unknown(
            scene.missing("nerve/holesCrossed", "Which plate holes does the nerve cross?"));
  }
}
