package org.bonewright.casefile.checking;

import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Strut;

/** What is said to have failed was in the bone: no plate breaks where none is. */
final class FailedMetalWasInTheBone implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.done()) {
      Optional<FailureMode> mode = procedure.operation().outcome().flatMap(Outcome::mode);
      if (mode.isPresent()) {
        MetalInTheBone.after(procedure, contents)
            .filter(metal -> !holdsAny(metal, culprits(mode.get())))
            .ifPresent(
                metal ->
                    objections.refuse(
                        procedure.at().field("outcome").field("mode"),
                        "the mode "
                            + Wording.asWritten(mode.get())
                            + ", with "
                            + metal.inWords()
                            + " in the bone",
                        "a mode of failure of what was in the bone then"));
      }
    }
  }

  private static boolean holdsAny(MetalInTheBone metal, Set<Class<? extends Implant>> kinds) {
    return kinds.isEmpty()
        || metal.implants().stream().anyMatch(fitted -> kinds.stream().anyMatch(fitted::isA));
  }

  /** Return the kinds of implant one of which must be there; empty when none need be. */
  private static Set<Class<? extends Implant>> culprits(FailureMode mode) {
    return switch (mode) {
      case SCREWS_PULLED_OUT,
          SCREWS_PULLED_OUT_IN_SEQUENCE,
          PLATE_PULLED_OFF_AS_BLOCK,
          PLATE_BROKEN,
          PLATE_BROKEN_AT_EMPTY_HOLE,
          PLATE_BROKEN_AT_FILLED_HOLE,
          PLATE_BENT ->
          Set.of(Plate.class);
      case SCREW_BROKEN, ALL_SCREWS_LUCENT -> Set.of(Plate.class, LagScrew.class);
      case BOLT_BROKEN,
          BOLT_BACKED_OUT,
          NAIL_BROKEN,
          NAIL_BROKEN_AT_BOLT_HOLE,
          NAIL_BROKEN_MID_SHAFT ->
          Set.of(Nail.class);
      case CERCLAGE_CUT_THROUGH -> Set.of(Cerclage.class);
      case STRUT_RESORBED -> Set.of(Strut.class);
      case PINS_LOOSE -> Set.of(ExternalFixator.class);
      case FRACTURE_AT_IMPLANT_END, NO_UNION_METAL_INTACT, CALLUS_LINE_OPEN, INFECTION, DEFORMITY ->
          Set.of();
    };
  }
}
