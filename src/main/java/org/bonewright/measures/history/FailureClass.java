package org.bonewright.measures.history;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Outcome;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.WhichMode;
import org.bonewright.measures.Words;

/** What a failure mode is, as far as its time tells: hold, bending, breakage, or nothing of it. */
final class FailureClass implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "failure-class",
        "Kind of failure by its time",
        Definition.words("hold", "bending", "breakage", "other"),
        "hold for screws or a plate pulled out, bolts backed out, a cerclage cut through; bending"
            + " for a bent plate; breakage for a broken plate, screw, bolt or nail; other for what"
            + " comes at any time",
        List.of("operations/outcome/mode"),
        "reading of failures after AO Principles, from memory; the grouping is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("operation-failed", "no")) {
      return new Reading.None("did not fail");
    }
    Optional<FailureMode> mode = scene.operation().outcome().flatMap(Outcome::mode);
    return mode.map(m -> read(m, scene))
        .orElseGet(
            () -> Reading.unknown(scene.missing("outcome/mode", "How did it fail: what broke?")));
  }

  private static Reading read(FailureMode mode, Scene scene) {
    return Reading.words(
        mode.possible().stream().map(FailureClass::word).collect(Collectors.toSet()),
        Kind.FACT,
        Words.of(mode),
        scene.missing("outcome/mode", WhichMode.question(mode)));
  }

  private static String word(FailureMode mode) {
    return switch (mode) {
      case SCREWS_PULLED_OUT,
          SCREWS_PULLED_OUT_IN_SEQUENCE,
          PLATE_PULLED_OFF_AS_BLOCK,
          BOLT_BACKED_OUT,
          CERCLAGE_CUT_THROUGH ->
          "hold";
      case PLATE_BENT -> "bending";
      case PLATE_BROKEN,
          PLATE_BROKEN_AT_EMPTY_HOLE,
          PLATE_BROKEN_AT_FILLED_HOLE,
          SCREW_BROKEN,
          BOLT_BROKEN,
          NAIL_BROKEN,
          NAIL_BROKEN_AT_BOLT_HOLE,
          NAIL_BROKEN_MID_SHAFT ->
          "breakage";
      case STRUT_RESORBED,
          PINS_LOOSE,
          ALL_SCREWS_LUCENT,
          FRACTURE_AT_IMPLANT_END,
          NO_UNION_METAL_INTACT,
          CALLUS_LINE_OPEN,
          INFECTION,
          DEFORMITY ->
          "other";
    };
  }
}
