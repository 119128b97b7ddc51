package org.bonewright.measures.force;

import java.util.List;
import java.util.Optional;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Scene;
import org.bonewright.measures.load.LoadMeasures;
import org.bonewright.measures.load.PermittedLoads;

/** The loads that are in force, and the solutions that all measures of forces share. */
final class Modelling {

  private final PermittedLoads permitted;
  private final Solutions solutions = new Solutions();
  private final HoldOuts holdOuts = new HoldOuts();

  /** Begin with these loads. */
  Modelling(PermittedLoads permitted) {
    this.permitted = permitted;
  }

  /** Return the construct of a scene, solved under what it bears at first. */
  Forces forces(Scene scene) {
    return scene.once(
        "forces",
        () -> {
          List<MissingFact> asks =
              permitted.missing(scene).stream()
                  .filter(fact -> !fact.field().equals(LoadMeasures.STATED))
                  .toList();
          return Forces.of(scene, loads(scene), asks, solutions);
        });
  }

  private List<Loading> loads(Scene scene) {
    return permitted.of(scene).stream().map(Loading::of).toList();
  }

  /** Return how a construct lets go; empty where the model has no answer. */
  Optional<List<LetGo>> holdOut(Scene scene, Forces.Known known) {
    return holdOuts.of(known, loads(scene));
  }

  /** Return how stiff a construct is; empty where the model has too few answers. */
  Optional<Solutions.Stiff> stiffness(Sketch sketch) {
    return solutions.stiffness(sketch);
  }
}
