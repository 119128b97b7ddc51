package org.bonewright.measures.compression;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the pull of the plate is all that presses the line. */
final class PressedByPlateAlone implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "pressed-by-plate-alone",
        "Pressed by the pull of the plate alone",
        Definition.yesOrNo(),
        "yes when eccentric screws or a tension device pull along the plate and no lag screw crosses"
            + " the line",
        List.of("plate-used", "compression-method", "operations/fixation"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("plate-used", "no")) {
      return Reading.word("no", "no plate in place");
    }
    Reading method = scene.read("compression-method");
    if (!AlongThePlate.possible(method)) {
      return Reading.word("no", "pressed by " + method.shown());
    }
    Optional<List<Implant>> put = scene.fixing().fixation();
    if (put.isEmpty()) {
      return Reading.unknown(
          scene.missingOfFixing("fixation", "Which implants were put in, lag screws included?"));
    }
    if (put.get().stream().anyMatch(LagScrew.class::isInstance)) {
      return Reading.word("no", "a lag screw crosses the line");
    }
    if (!(method instanceof Reading.Word word)) {
      return new Reading.Unknown(method.missing());
    }
    Set<String> possible = new HashSet<>();
    word.possible()
        .forEach(one -> possible.add(AlongThePlate.METHODS.contains(one) ? "yes" : "no"));
    return Reading.words(
        possible, word.kind(), word.shown(), word.missing().toArray(MissingFact[]::new));
  }
}
