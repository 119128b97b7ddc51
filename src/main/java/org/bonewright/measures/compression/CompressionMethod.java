package org.bonewright.measures.compression;

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

/** By what the line was pressed together. */
final class CompressionMethod implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "compression-method",
        "Method of compression",
        Definition.words(
            "none",
            "lag-screw",
            "eccentric-screws",
            "tension-device",
            "clamp",
            "nail-backslap",
            "fixator"),
        "as stated; a lag screw in place counts as the method where none, or a clamp, is stated. Not"
            + " recorded: none in a plan and for relative stability; for absolute stability any"
            + " lasting one",
        List.of("operations/compression/method", "operations/fixation", "operations/concept"),
        "usual terms of plating; the inference is our convention, as for the handling of the line");
  }

  @Override
  public Reading take(Scene scene) {
    boolean lag =
        scene.fixing().fixation().stream()
            .flatMap(List::stream)
            .anyMatch(LagScrew.class::isInstance);
    Optional<Compression.Method> stated = scene.fixing().compression().map(Compression::method);
    boolean lasting =
        stated
            .map(m -> m != Compression.Method.NONE && m != Compression.Method.CLAMP)
            .orElse(false);
    if (lag && !lasting) {
      return Reading.word("lag-screw", "a lag screw is in place");
    }
    if (stated.isPresent()) {
      return Reading.word(Words.written(stated.get()), "as stated");
    }
    if (scene.fixingIsPlanned()) {
      return Reading.word("none", "no compression planned");
    }
    return inferred(scene);
  }

  private static Reading inferred(Scene scene) {
    MissingFact missing =
        scene.missingOfFixing(
            "compression/method",
            "How was the line compressed: not at all, lag screw, eccentric screws, tension"
                + " device?");
    Optional<Concept> concept = scene.fixing().concept();
    if (concept.isEmpty()) {
      return Reading.unknown(missing);
    }
    return concept.get() == Concept.RELATIVE
        ? Reading.words(Set.of("none"), Kind.ASSUMED, "inferred from relative stability", missing)
        : Reading.words(
            Set.of("lag-screw", "eccentric-screws", "tension-device", "nail-backslap", "fixator"),
            Kind.ASSUMED,
            "inferred from absolute stability",
            missing);
  }
}
