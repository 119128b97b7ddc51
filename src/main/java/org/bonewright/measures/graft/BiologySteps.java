package org.bonewright.measures.graft;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** How many things are done for the biology of the site. */
final class BiologySteps implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "biology-steps",
        "Steps for biology",
        Definition.count(1),
        "count of grafts of any kind, decortication included, of struts of the patient's own bone,"
            + " and of bone transport, over every stage; a cement spacer counts for nothing",
        List.of("operations/biology", "operations/fixation", "operations/transport"),
        "bookkeeping; what counts is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> steps = scene.subject().steps();
    Biology biology = Biology.of(steps);
    if (!biology.told() || steps.stream().anyMatch(step -> step.fixation().isEmpty())) {
      return Reading.unknown(Biology.asked(scene));
    }
    List<String> found = new ArrayList<>();
    biology.grafts().stream()
        .map(Graft::kind)
        .filter(kind -> kind != Graft.Kind.SPACER)
        .forEach(kind -> found.add(Words.of(kind)));
    Biology.struts(steps).stream()
        .filter(Biology::isAutograft)
        .forEach(strut -> found.add("strut of own bone"));
    steps.stream()
        .filter(step -> step.transport().isPresent())
        .forEach(step -> found.add("bone transport"));
    return new Reading.Amount(
        found.size(),
        found.size(),
        Kind.FACT,
        found.isEmpty() ? "none" : String.join(", ", found),
        List.of());
  }
}
