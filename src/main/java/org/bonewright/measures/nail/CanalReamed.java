package org.bonewright.measures.nail;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Numbers;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the canal was reamed for the nail that holds the bone. */
final class CanalReamed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "canal-reamed",
        "Canal reamed",
        Definition.yesOrNo(),
        "yes when a last reamer is stated, no when it is stated as 0; none without a nail",
        List.of("operations/fixation/reamedMm"),
        "the case file");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Nail> nail = Nails.nail(scene);
    if (nail.isEmpty()) {
      return Nails.noNail(scene);
    }
    MissingFact reamer =
        scene.missing(
            "fixation/" + nail.get().id() + "/reamedMm",
            "What was the last reamer, in mm (0: none)?");
    Optional<Quantity> last = nail.get().reamedMm();
    if (last.isEmpty()) {
      return Reading.words(Set.of("yes", "no"), Kind.FACT, "not stated", reamer);
    }
    String shown = "last reamer " + Numbers.shown(last.get()) + " mm";
    if (last.get().max() == 0) {
      return Reading.word("no", "not reamed");
    }
    return last.get().min() > 0
        ? Reading.word("yes", shown)
        : Reading.words(Set.of("yes", "no"), Kind.FACT, shown, reamer);
  }
}
