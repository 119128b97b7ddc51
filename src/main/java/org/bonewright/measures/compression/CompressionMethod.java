package org.bonewright.measures.compression;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
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

  private static final Set<String> WORDS =
      Arrays.stream(Compression.Method.values())
          .map(Words::written)
          .collect(Collectors.toCollection(LinkedHashSet::new));

  private static final Set<String> LASTING =
      Set.of("lag-screw", "eccentric-screws", "tension-device", "nail-backslap", "fixator");

  @Override
  public Definition definition() {
    return new Definition(
        "compression-method",
        "Method of compression",
        Definition.words(WORDS.toArray(String[]::new)),
        "as stated; a lag screw in place counts as the method where none, or a clamp, is stated. Not"
            + " recorded: none in a plan and for relative stability; for absolute stability any"
            + " lasting one. No lag screw where what was put in is told and none is among it",
        List.of("operations/compression/method", "operations/fixation", "operations/concept"),
        "usual terms of plating; the inference is our convention");
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
    boolean noLag = scene.fixing().fixation().isPresent();
    if (concept.isEmpty()) {
      return noLag
          ? Reading.words(
              without("lag-screw", WORDS), Kind.FACT, "no lag screw among what was put in", missing)
          : Reading.unknown(missing);
    }
    return concept.get() == Concept.RELATIVE
        ? Reading.words(Set.of("none"), Kind.ASSUMED, "inferred from relative stability", missing)
        : Reading.words(
            noLag ? without("lag-screw", LASTING) : LASTING,
            Kind.ASSUMED,
            "inferred from absolute stability",
            missing);
  }

  private static Set<String> without(String word, Set<String> words) {
    Set<String> others = new TreeSet<>(words);
    others.remove(word);
    return others;
  }
}
