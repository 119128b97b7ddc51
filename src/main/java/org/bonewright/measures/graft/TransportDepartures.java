package org.bonewright.measures.graft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.BoneTransport;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many of the usual conditions of a bone transport are not kept. */
final class TransportDepartures implements Measure {

  private static final int CONDITIONS = 5;

  /** About a month and a half a centimetre, with a tenth of leeway. */
  private static final double CONSOLIDATION_DAYS_PER_CM = 40;

  @Override
  public Definition definition() {
    return new Definition(
        "transport-departures",
        "Conditions of transport not kept",
        new Definition.Domain.Numbers("1", "", 0, CONDITIONS, 1),
        "count of: wait of 5 to 10 days before the first move; at most 1 mm a day; at least four"
            + " steps a day; about one and a half months of consolidation a centimetre moved (at"
            + " least 40 days); graft or compression planned where the ends meet",
        List.of("operations/transport", "gap-widest"),
        "teaching of distraction osteogenesis, from memory; the leeway is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<BoneTransport> transport =
        scene.subject().steps().stream()
            .flatMap(step -> step.transport().stream())
            .reduce((first, second) -> second);
    if (transport.isEmpty()) {
      return new Reading.None("no transport mentioned");
    }
    Tally tally = new Tally(scene);
    BoneTransport plan = transport.get();
    tally.within("wait before the first move", "latencyDays", plan.latencyDays(), 5, 10);
    tally.within("movement a day", "mmPerDay", plan.mmPerDay(), 0, 1);
    tally.within("steps a day", "stepsPerDay", plan.stepsPerDay(), 4, 1000);
    tally.consolidation(plan.consolidationDays());
    tally.docking(plan.dockingTreated());
    return tally.reading();
  }

  /** Adds up the conditions. */
  private static final class Tally {

    private final Scene scene;
    private final List<String> broken = new ArrayList<>();
    private final List<MissingFact> open = new ArrayList<>();

    Tally(Scene scene) {
      this.scene = scene;
    }

    void within(String what, String field, Optional<Quantity> value, double least, double most) {
      if (value.isEmpty()
          || (value.get().min() < least && value.get().max() >= least)
          || (value.get().max() > most && value.get().min() <= most)) {
        ask(what, field);
      } else if (value.get().max() < least || value.get().min() > most) {
        broken.add(what + " " + Dimension.stated(value.get(), "").numbers());
      }
    }

    void consolidation(Optional<Quantity> days) {
      boolean told =
          days.isPresent()
              && scene.read("gap-widest") instanceof Reading.Amount gap
              && gap.min() > 0
              && !Double.isInfinite(gap.max());
      if (!told) {
        ask("consolidation after the last move", "consolidationDays");
        return;
      }
      Reading.Amount gap = (Reading.Amount) scene.read("gap-widest");
      double least = CONSOLIDATION_DAYS_PER_CM * gap.min() / 10;
      double most = CONSOLIDATION_DAYS_PER_CM * gap.max() / 10;
      if (days.orElseThrow().max() < least) {
        broken.add("consolidation " + Dimension.stated(days.orElseThrow(), "").numbers() + " days");
      } else if (days.orElseThrow().min() < most) {
        ask("consolidation after the last move", "consolidationDays");
      }
    }

    void docking(Optional<Answer> treated) {
      boolean silent = treated.isEmpty() && !scene.subject().planned();
      if (silent || treated.equals(Optional.of(Answer.UNKNOWN))) {
        ask("treatment of the docking site", "dockingTreated");
      } else if (!treated.equals(Optional.of(Answer.YES))) {
        broken.add("docking site not treated");
      }
    }

    private void ask(String what, String field) {
      open.add(scene.missing("transport/" + field, "What is the " + what + "?"));
    }

    Reading reading() {
      return new Reading.Amount(
          broken.size(),
          broken.size() + open.size(),
          Kind.FACT,
          broken.isEmpty() ? "none" : String.join(", ", broken),
          open);
    }
  }
}
