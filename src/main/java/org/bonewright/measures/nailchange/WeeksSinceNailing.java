package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many weeks after nailing bolts are taken out. */
final class WeeksSinceNailing implements Measure {

  static final String ID = "weeks-nailing-to-dynamisation";

  private static final double DAYS = 7;

  @Override
  public Definition definition() {
    return new Definition(
        ID,
        "Weeks from nailing to dynamisation",
        new Definition.Domain.Numbers("wk", "weeks", 0, Double.POSITIVE_INFINITY, 0),
        "days between the operation that put the nail in and the one that takes bolts out, divided by"
            + " 7; for a plan, up to the last findings. None where no bolt is taken out of a nail that"
            + " stays",
        List.of("operations/day", "findings/day", "operations/removed/bolts"),
        "the last findings as the day of a plan: our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Reading> none = Dynamisation.noneHere(scene);
    if (none.isPresent()) {
      return none.get();
    }
    Dynamisation here = Dynamisation.of(scene).orElseThrow();
    MissingFact missing =
        scene.missingInCase(
            here.nailing().id() + "/day",
            "On which day was the nail put in, and on which do the bolts come out?");
    Optional<Quantity> from = here.nailing().day();
    Optional<Quantity> to = Dynamisation.day(scene);
    if (from.isEmpty() || to.isEmpty()) {
      return Reading.unknown(missing);
    }
    Dimension weeks =
        new Dimension(
            Math.max(0, (to.get().min() - from.get().max()) / DAYS),
            Math.max(0, (to.get().max() - from.get().min()) / DAYS),
            false,
            "");
    return Reading.number(weeks, "nail put in by " + here.nailing().id(), missing);
  }
}
