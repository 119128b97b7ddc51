package org.bonewright.measures.alignment;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Companion;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Reduction;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;

/**
 * The other bone of the forearm, as far as a subject knew of it. A bone that stands alone, and the
 * leg, have none that counts here.
 *
 * @param pair whether there is such a bone
 * @param state its state, where told
 * @param reduction how the last operation that was known to set it left it, where told
 */
record Beside(boolean pair, Optional<Companion.State> state, Optional<Reduction> reduction) {

  static Beside of(Scene scene) {
    boolean pair = scene.boneName() == BoneName.RADIUS || scene.boneName() == BoneName.ULNA;
    if (!pair) {
      return new Beside(false, Optional.empty(), Optional.empty());
    }
    Optional<Companion> beside = scene.subject().caseFile().companion();
    List<Operation> known =
        beside.map(Companion::operations).orElse(List.of()).stream()
            .filter(o -> o.day().map(scene.subject()::knows).orElse(scene.subject().planned()))
            .filter(Standing::sets)
            .toList();
    return new Beside(
        true,
        beside.map(Companion::state).filter(state -> state != Companion.State.UNKNOWN),
        known.isEmpty() ? Optional.empty() : known.get(known.size() - 1).reduction());
  }

  /** Return whether it was certainly broken at some time. */
  boolean broken() {
    return pair
        && (reduction.isPresent() || state.map(s -> s != Companion.State.INTACT).orElse(false));
  }

  /** Return whether it may have been broken. */
  boolean mayBeBroken() {
    return pair && (broken() || state.isEmpty());
  }

  MissingFact missing(Scene scene) {
    return broken()
        ? scene.missingInCase(
            "companion/operations/reduction",
            "How does the other forearm bone stand: angles, and shortening in mm?")
        : scene.missingInCase("companion/state", "Was the other forearm bone broken too?");
  }
}
