package org.bonewright.measures.line;

import java.util.List;
import java.util.Set;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** The kind of stability intended, stated or inferred. */
final class ConceptMeasure implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "concept",
        "Concept",
        Definition.words("absolute", "relative"),
        "as stated; else inferred: a line that was compressed or held by a lag screw means"
            + " absolute, a bridged line, a nail or a fixator relative stability; else either. None where"
            + " no plate, nail, fixator or lag screw is left in place",
        List.of("operations/concept", "line-handling", "main-implant-used"),
        "usual terms of fracture fixation; the inference is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("main-implant-used", "no")
        && scene.construct().of(LagScrew.class).isEmpty()) {
      return new Reading.None("nothing holds the bone");
    }
    if (scene.fixing().concept().isPresent()) {
      String stated = Words.written(scene.fixing().concept().get());
      return Reading.word(stated, "as stated");
    }
    boolean plate = scene.possibly("plate-used", "yes");
    boolean inner =
        !scene.construct().of(Nail.class).isEmpty()
            || !scene.construct().of(ExternalFixator.class).isEmpty();
    if (!plate && inner) {
      return Reading.words(Set.of("relative"), Kind.ASSUMED, "inferred from nail or fixator");
    }
    boolean mayBridge = scene.possibly("line-handling", "bridged");
    boolean mayPress =
        scene.possibly("line-handling", "compressed")
            || scene.possibly("line-handling", "neutralised");
    MissingFact missing =
        scene.missingOfFixing("concept", "Which stability was intended: absolute or relative?");
    if (mayBridge && mayPress) {
      return Reading.unknown(missing);
    }
    return Reading.words(
        Set.of(mayPress ? "absolute" : "relative"),
        Kind.ASSUMED,
        "inferred from the handling of the line");
  }
}
