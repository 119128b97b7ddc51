package org.bonewright.measures.care;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.LoadStep;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a load limit was given in numbers. */
final class LoadLimitGiven implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "load-limit-given",
        "A load limit in numbers",
        Definition.yesOrNo(),
        "yes when at least one step of load is given; not in a plan: no",
        List.of("operations/aftercare/load"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<List<LoadStep>> load = scene.operation().aftercare().flatMap(Aftercare::load);
    if (load.isPresent() && !load.get().isEmpty()) {
      return Reading.word("yes", load.get().size() + " steps");
    }
    return load.isPresent() || scene.subject().planned()
        ? Reading.word("no", "none given")
        : Reading.unknown(
            scene.missing("aftercare/load", "Which load was allowed, in kg, and until when?"));
  }
}
