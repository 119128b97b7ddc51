package org.bonewright.measures.reuse;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.LoadStep;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** For how long the load on the bone is limited after the operation, as ordered. */
final class ProtectedLoad implements Measure {

  private static final Set<BoneName> OF_THE_LEG = EnumSet.of(BoneName.FEMUR, BoneName.TIBIA);
  private static final double LEG = 50;
  private static final double ARM = 10;

  @Override
  public Definition definition() {
    return new Definition(
        "load-protected-days",
        "Days of protected load",
        new Definition.Domain.Numbers("d", "days", 0, 1000, 0),
        "day until which a load limit is ordered, of at most 50 kg for femur and tibia and 10 kg for"
            + " the other bones; the latest such step of the last operation or stage counts; a plan"
            + " without one: 0",
        List.of("operations/aftercare/load"),
        "what counts as protected is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<List<LoadStep>> steps = scene.operation().aftercare().flatMap(Aftercare::load);
    MissingFact missing =
        scene.missing("aftercare/load", "Which load was allowed, and until which day?");
    if (steps.isEmpty()) {
      return scene.subject().planned()
          ? Reading.number(0, "no load limit planned")
          : Reading.unknown(missing);
    }
    double most = OF_THE_LEG.contains(scene.boneName()) ? LEG : ARM;
    double min = 0;
    double max = 0;
    for (LoadStep step : steps.get()) {
      min = step.limitKg().max() <= most ? Math.max(min, step.untilDay().min()) : min;
      max = step.limitKg().min() <= most ? Math.max(max, step.untilDay().max()) : max;
    }
    return Reading.number(new Dimension(min, max, false, ""), "load limits as ordered", missing);
  }
}
