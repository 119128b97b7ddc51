package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.LagScrew;
import org.bonewright.measures.Definition;
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
        List.of("main-implant-used", "compression-method"),
        "usual terms of plating; the inference is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("main-implant-used", "no")
        && scene.construct().of(LagScrew.class).isEmpty()) {
      return new Reading.None("nothing holds the bone");
    }
    return scene.read("compression-method") instanceof Reading.Word method
        ? Reading.words(
            method.possible().stream().map(LineHandling::by).collect(Collectors.toSet()),
            method.kind(),
            working(scene, method),
            method.missing().toArray(MissingFact[]::new))
        : new Reading.Unknown(scene.read("compression-method").missing());
  }

  private static String by(String method) {
    return switch (method) {
      case "none", "clamp" -> "bridged";
      case "lag-screw" -> "neutralised";
      default -> "compressed";
    };
  }

  private static String working(Scene scene, Reading.Word method) {
    Optional<String> stated =
        scene
            .fixing()
            .compression()
            .map(Compression::method)
            .filter(told -> method.possible().equals(Set.of(Words.written(told))))
            .map(LineHandling::stated);
    return stated.orElse(method.working());
  }

  private static String stated(Compression.Method method) {
    return switch (method) {
      case NONE, CLAMP -> "no lasting compression";
      case LAG_SCREW -> "lag screw";
      case ECCENTRIC_SCREWS, TENSION_DEVICE, NAIL_BACKSLAP, FIXATOR ->
          "compressed by " + Words.of(method);
    };
  }
}
