package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether bolts are taken out of a nail that stays, across a line that has not united. */
final class NailDynamised implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nail-dynamised",
        "Bolts taken out of a nail that stays",
        Definition.yesOrNo(),
        "yes when bolts come out of a nail that stays across a line not united, and no plate, nail"
            + " or fixator goes in; else no",
        List.of("operations/removed/bolts", "operations/fixation", "still-broken"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Reading> none = Dynamisation.noneHere(scene);
    if (none.isEmpty()) {
      return Reading.word("yes", "bolts come out");
    }
    return none.get() instanceof Reading.None reason
        ? Reading.word("no", reason.why())
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "whether the bone had united is not told",
            none.get().missing().toArray(MissingFact[]::new));
  }
}
