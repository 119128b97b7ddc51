package org.bonewright.measures.force;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.ConstructHoldOut;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.model.HoldOutOfConstruct;
import org.bonewright.mechanics.model.MechanicalModel;

/**
 * Raises the permitted load until a construct lets go, under one set of assumptions. Pressed screws
 * are pulled out one after another ({@link HoldOutOfConstruct}); locked ones give way together
 * ({@link LockedGroups}). Of several loads the one counts under which it lets go first.
 */
final class LettingGo {

  private final Sketch sketch;
  private final List<Loading> loadings;

  /**
   * Prepare.
   *
   * @param sketch the construct, its screws all pressed or all locked
   * @param loadings what it bears at first
   */
  LettingGo(Sketch sketch, List<Loading> loadings) {
    this.sketch = sketch;
    this.loadings = List.copyOf(loadings);
  }

  /** Return how it lets go; empty where the model finds no answer. */
  Optional<LetGo> under(Draw draw) {
    Builder builder = new Builder(sketch, draw);
    List<Load> loads = loadings.stream().map(load -> load.under(draw, sketch.facing())).toList();
    FixedBone fixed = builder.build();
    MechanicalModel model = new MechanicalModel(fixed);
    LetGo earliest = new LetGo(LetGo.MOST, LetGo.Mode.HOLDS);
    for (Load load : loads) {
      Optional<Borne> borne = Borne.of(model, load);
      if (borne.isEmpty()) {
        return Optional.empty();
      }
      earliest = earliest.orEarlier(letGo(fixed, load, borne.get(), builder.radius()));
    }
    return Optional.of(earliest);
  }

  private LetGo letGo(FixedBone fixed, Load load, Borne borne, double radius) {
    if (borne.parts(radius)) {
      return new LetGo(0, LetGo.Mode.SLIPS);
    }
    if (!borne.whole()) {
      return new LetGo(borne.share(), LetGo.Mode.SLIPS);
    }
    return sketch.locked() ? locked(borne.answer()) : pressed(fixed, load);
  }

  private static LetGo locked(LoadAnswer answer) {
    double share = new LockedGroups(answer).share();
    return new LetGo(share, share < LetGo.MOST ? LetGo.Mode.TOGETHER : LetGo.Mode.HOLDS);
  }

  private static LetGo pressed(FixedBone fixed, Load load) {
    Optional<ConstructHoldOut> told = HoldOutOfConstruct.under(fixed, load);
    OptionalDouble most = told.map(ConstructHoldOut::holdOutShare).orElse(OptionalDouble.empty());
    if (most.isEmpty()) {
      return new LetGo(LetGo.MOST, LetGo.Mode.HOLDS);
    }
    if (told.get().screws().isEmpty()) {
      return new LetGo(most.getAsDouble(), LetGo.Mode.SLIPS);
    }
    return new LetGo(
        most.getAsDouble(), told.get().unzips() ? LetGo.Mode.UNZIPS : LetGo.Mode.HOLDS);
  }
}
