package org.bonewright.measures.compression;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.Concept;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many earlier operations compressed the line under a plate and failed. */
final class CompressionsLost implements Measure {

  private static final Set<Compression.Method> UNDER_A_PLATE =
      EnumSet.of(
          Compression.Method.LAG_SCREW,
          Compression.Method.ECCENTRIC_SCREWS,
          Compression.Method.TENSION_DEVICE,
          Compression.Method.CLAMP);

  /** Whether something is so. */
  private enum Grade {
    YES,
    NO,
    UNKNOWN
  }

  @Override
  public Definition definition() {
    return new Definition(
        "compressions-lost-before",
        "Earlier operations that lost compression",
        Definition.count(1),
        "earlier operations that put in a plate, compressed the line by screws, device or clamp, and"
            + " failed; where the method or the end is not recorded, it may count or not",
        List.of(
            "operations/compression/method",
            "operations/fixation",
            "operations/concept",
            "operations/outcome/result"),
        "taking every failure under compression as compression lost is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    int certain = 0;
    List<MissingFact> missing = new ArrayList<>();
    List<String> lost = new ArrayList<>();
    for (Operation earlier : scene.doneBefore()) {
      Grade pressed = pressed(earlier);
      Grade failed = failed(earlier);
      if (pressed == Grade.YES && failed == Grade.YES) {
        certain++;
        lost.add(earlier.id());
      } else if (pressed != Grade.NO && failed != Grade.NO) {
        missing.add(missing(scene, earlier, pressed));
      }
    }
    return new Reading.Amount(
        certain,
        certain + missing.size(),
        Kind.FACT,
        lost.isEmpty() ? "none recorded" : String.join(", ", lost),
        missing);
  }

  private static MissingFact missing(Scene scene, Operation earlier, Grade pressed) {
    String id = earlier.id();
    if (pressed == Grade.YES) {
      return scene.missingInCase(id + "/outcome/result", "What became of " + id + "?");
    }
    return earlier.fixation().isEmpty()
        ? scene.missingInCase(id + "/fixation", "Which implants were put in by " + id + "?")
        : scene.missingInCase(
            id + "/compression/method", "How was the line compressed in " + id + "?");
  }

  private static Grade pressed(Operation operation) {
    Optional<Boolean> plate =
        operation.fixation().map(put -> put.stream().anyMatch(Plate.class::isInstance));
    Optional<Boolean> method =
        operation
            .compression()
            .map(compression -> UNDER_A_PLATE.contains(compression.method()))
            .or(
                () ->
                    operation.concept().equals(Optional.of(Concept.RELATIVE))
                        ? Optional.of(false)
                        : Optional.empty());
    if (!plate.orElse(true) || !method.orElse(true)) {
      return Grade.NO;
    }
    return plate.isPresent() && method.isPresent() ? Grade.YES : Grade.UNKNOWN;
  }

  private static Grade failed(Operation operation) {
    return operation
        .outcome()
        .map(Outcome::result)
        .map(
            result ->
                switch (result) {
                  case FAILED -> Grade.YES;
                  case UNITED, STAGE_DONE, UNDER_WAY -> Grade.NO;
                  case UNKNOWN -> Grade.UNKNOWN;
                })
        .orElse(Grade.UNKNOWN);
  }
}
