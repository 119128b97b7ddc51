package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.Concept;
import org.bonewright.casefile.LagScrew;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** What was done with the line: compressed, held by a lag screw and neutralised, or bridged. */
final class LineHandling implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "line-handling",
        "Handling of the line",
        Definition.words("compressed", "neutralised", "bridged"),
        "compressed when eccentric screws, a tension device, a nail or a fixator pressed along the"
            + " axis; neutralised when a lag screw crosses the line; bridged when neither. Where"
            + " compression is not recorded: bridged for relative stability, either of the others"
            + " for absolute stability, bridged in a plan. None where no plate, nail, fixator or lag screw is"
            + " left in place",
        List.of(
            "main-implant-used",
            "operations/compression/method",
            "operations/fixation",
            "operations/concept"),
        "usual terms of plating; the inference is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("main-implant-used", "no")
        && scene.construct().of(LagScrew.class).isEmpty()) {
      return new Reading.None("nothing holds the bone");
    }
    Optional<Compression.Method> method = scene.fixing().compression().map(Compression::method);
    if (method.isPresent()) {
      return of(method.get(), lagScrew(scene));
    }
    if (lagScrew(scene)) {
      return Reading.word("neutralised", "a lag screw is in place");
    }
    if (scene.fixingIsPlanned()) {
      return Reading.word("bridged", "no compression planned");
    }
    MissingFact missing =
        scene.missingOfFixing(
            "compression/method",
            "How was the line compressed: not at all, lag screw, eccentric screws, tension"
                + " device?");
    Optional<Concept> concept = scene.fixing().concept();
    boolean noLag = scene.fixing().fixation().isPresent();
    if (concept.isEmpty()) {
      return noLag
          ? Reading.words(
              Set.of("bridged", "compressed"),
              Kind.FACT,
              "no lag screw among what was put in",
              missing)
          : Reading.unknown(missing);
    }
    return concept.get() == Concept.RELATIVE
        ? Reading.words(
            Set.of("bridged"), Kind.ASSUMED, "inferred from relative stability", missing)
        : Reading.words(
            noLag ? Set.of("compressed") : Set.of("compressed", "neutralised"),
            Kind.ASSUMED,
            "inferred from absolute stability",
            missing);
  }

  private static Reading of(Compression.Method method, boolean lagScrew) {
    return switch (method) {
      case ECCENTRIC_SCREWS, TENSION_DEVICE, NAIL_BACKSLAP, FIXATOR ->
          Reading.word("compressed", "compressed by " + Words.of(method));
      case LAG_SCREW -> Reading.word("neutralised", "lag screw");
      case NONE, CLAMP ->
          lagScrew
              ? Reading.word("neutralised", "a lag screw is in place")
              : Reading.word("bridged", "no lasting compression");
    };
  }

  private static boolean lagScrew(Scene scene) {
    return scene.fixing().fixation().stream()
        .flatMap(List::stream)
        .anyMatch(LagScrew.class::isInstance);
  }
}
