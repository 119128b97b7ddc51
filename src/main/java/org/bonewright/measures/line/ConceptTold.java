package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.Concept;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the kind of stability intended is named, and whether what was done agrees with it. */
final class ConceptTold implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "concept-told",
        "Concept named",
        Definition.words("stated", "contradicted", "inferred", "unclear"),
        "stated when the file names it; contradicted when it names absolute stability and nothing"
            + " presses the line, neither axial compression nor lag screw nor wire; inferred when it"
            + " follows from implants and compression; unclear when a plan leaves both open. Where an"
            + " operation of the past leaves both open it is not known. None where nothing holds the"
            + " bone",
        List.of("operations/concept", "concept", "line-handling", "main-implant-used"),
        "the inference is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Reading concept = scene.read("concept");
    if (concept instanceof Reading.None none) {
      return none;
    }
    Optional<Concept> stated = scene.fixing().concept();
    if (stated.isPresent()) {
      return stated.get() == Concept.ABSOLUTE && nothingPresses(scene)
          ? Reading.word("contradicted", "absolute stability named, and nothing presses the line")
          : Reading.word("stated", concept.shown());
    }
    if (concept instanceof Reading.Word word && word.possible().size() == 1) {
      return Reading.words(
          java.util.Set.of("inferred"), Kind.ASSUMED, concept.shown() + ", " + concept.working());
    }
    return scene.fixingIsPlanned()
        ? Reading.word("unclear", "not named, and it does not follow from the rest")
        : new Reading.Unknown(concept.missing());
  }

  private static boolean nothingPresses(Scene scene) {
    return scene.construct().known()
        && scene.certainly("line-handling", "bridged")
        && scene.construct().of(Cerclage.class).isEmpty();
  }
}
