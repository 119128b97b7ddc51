package org.bonewright.measures.compression;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How far the bent plate stood off the bone over the line before it was pulled. */
final class PrebendHeight implements Measure {

  private static final double USUAL_LEAST = 1;
  private static final double USUAL_MOST = 2;

  @Override
  public Definition definition() {
    return new Definition(
        "prebend-height",
        "Plate off the bone over the line before compression",
        Definition.millimetres(),
        "as stated; 0 when the plate was not bent beforehand, and in a plan that does not say so; 1"
            + " to 2 mm when it was bent and no distance is given",
        List.of("operations/compression/prebendMm", "operations/compression/prebent"),
        "AO surgery reference, radius, for the usual distance; taking a noted bend as the usual one"
            + " is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    MissingFact height =
        scene.missingOfFixing(
            "compression/prebendMm",
            "How far did the bent plate stand off the bone over the line, in mm?");
    Optional<Quantity> stated = scene.fixing().compression().flatMap(Compression::prebendMm);
    if (stated.isPresent()) {
      return Reading.number(Dimension.stated(stated.get(), ""), "as stated", height);
    }
    MissingFact bent =
        scene.missingOfFixing(
            "compression/prebent", "Was the plate bent beforehand so that it stood off the line?");
    boolean plan = scene.fixingIsPlanned();
    Optional<Answer> answer = scene.fixing().compression().flatMap(Compression::prebent);
    if (answer.isEmpty()) {
      return plan ? Reading.number(0, "no bend planned") : Reading.unknown(bent);
    }
    return switch (answer.get()) {
      case YES ->
          new Reading.Amount(
              USUAL_LEAST,
              USUAL_MOST,
              Kind.ASSUMED,
              "bent beforehand, taken as the usual distance",
              List.of(height));
      case NO -> Reading.number(0, "not bent beforehand");
      case UNKNOWN -> Reading.unknown(bent);
    };
  }
}
