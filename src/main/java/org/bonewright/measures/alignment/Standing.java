package org.bonewright.measures.alignment;

import java.util.Arrays;
import java.util.Optional;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/** What the record says of how the bone stands at the end, and what to ask where it does not. */
final class Standing {

  private Standing() {}

  /** Return the degrees stated for one plane, with their sign. */
  static Optional<Quantity> stated(Scene scene, Plane plane) {
    return scene.reduction().flatMap(plane::of);
  }

  /** Where no angle at all is told, one look at the films answers everything: one question. */
  static MissingFact missing(Scene scene, Plane plane) {
    boolean nothing = Arrays.stream(Plane.values()).allMatch(p -> stated(scene, p).isEmpty());
    if (nothing) {
      return scene.missingOfFixing(
          "reduction/coronalDeg",
          "How many degrees does the bone stand off at the end: varus or valgus, to the front or"
              + " back, and in rotation?");
    }
    return scene.missingOfFixing(
        "reduction/" + plane.field(),
        switch (plane) {
          case CORONAL -> "How many degrees of varus (negative) or valgus are there at the end?";
          case SAGITTAL -> "How many degrees is the bone bent to the front or back at the end?";
          case ROTATION -> "By how many degrees is the bone turned against the other side?";
        });
  }

  /** Return whether an operation sets the bone, or tells how it stands. */
  static boolean sets(Operation operation) {
    return operation.carriesMainImplant().orElse(true) || operation.reduction().isPresent();
  }
}
