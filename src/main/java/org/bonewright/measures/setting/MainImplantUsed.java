package org.bonewright.measures.setting;

import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a plate, a nail or a fixator holds the bone at the end of the operation. */
final class MainImplantUsed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "main-implant-used",
        "A plate, nail or fixator holds the bone",
        Definition.yesOrNo(),
        "yes when the operation put one in, or left an earlier one that neither broke nor pulled"
            + " out",
        List.of("operations/fixation", "operations/removed", "operations/outcome/mode"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    boolean held = scene.construct().implants().stream().anyMatch(h -> h.implant().isMain());
    if (held) {
      return Reading.word("yes", "plate, nail or fixator in place");
    }
    return scene.construct().known()
        ? Reading.word("no", "neither plate nor nail nor fixator in place")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "the implants are not stated",
            scene.missing("fixation", "Which implants were put in?"));
  }
}
