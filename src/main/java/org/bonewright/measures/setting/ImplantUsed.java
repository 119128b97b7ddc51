package org.bonewright.measures.setting;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Implant;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether an implant of one type holds the bone at the end of the operation. */
final class ImplantUsed implements Measure {

  private final String id;
  private final String noun;
  private final Class<? extends Implant> type;

  ImplantUsed(String id, String noun, Class<? extends Implant> type) {
    this.id = id;
    this.noun = noun;
    this.type = type;
  }

  @Override
  public Definition definition() {
    return new Definition(
        id,
        "A " + noun + " holds the bone",
        Definition.yesOrNo(),
        "yes when the operation put in a "
            + noun
            + ", or left an earlier one that neither broke nor pulled out",
        List.of("operations/fixation", "operations/removed", "operations/outcome/mode"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (!scene.construct().of(type).isEmpty()) {
      return Reading.word("yes", "a " + noun + " is in place");
    }
    if (scene.construct().known()) {
      return Reading.word("no", "no " + noun + " is in place");
    }
    return Reading.words(
        Set.of("yes", "no"),
        Kind.FACT,
        "the implants are not stated",
        scene.missing("fixation", "Which implants were put in?"));
  }
}
