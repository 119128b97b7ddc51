package org.bonewright.measures.graft;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Whether a strut is put inside the bone, or on it. */
final class StrutUsed implements Measure {

  private final String id;
  private final Strut.Where where;

  StrutUsed(String id, Strut.Where where) {
    this.id = id;
    this.where = where;
  }

  @Override
  public Definition definition() {
    return new Definition(
        id,
        Words.of(where).substring(0, 1).toUpperCase(java.util.Locale.ROOT)
            + Words.of(where).substring(1)
            + " strut",
        Definition.yesOrNo(),
        "yes when the operation, or any stage of the plan, puts one in",
        List.of("operations/fixation/where"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    if (Biology.struts(steps).stream().anyMatch(strut -> strut.where() == where)) {
      return Reading.word("yes", "a strut is put in");
    }
    return steps.stream().allMatch(step -> step.fixation().isPresent())
        ? Reading.word("no", "no such strut")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "the implants are not stated",
            scene.missing("fixation", "Which implants were put in?"));
  }
}
