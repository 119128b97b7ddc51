package org.bonewright.measures.line;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Resection;
import org.bonewright.casefile.Zone;
import org.bonewright.measures.Scene;

/**
 * Whether one cut takes out the whole zone, so that two cut ends are left. It is only so where the
 * levels of both are known and the cut certainly reaches as far on either side.
 */
public final class WholeZoneCut {

  private WholeZoneCut() {}

  /** Return whether a step of the subject certainly makes such a cut. */
  public static boolean certain(Scene scene) {
    Optional<Zone> zone =
        scene.subject().latest(Finding::zone).or(() -> scene.subject().caseFile().injury().zone());
    Optional<Quantity> from = zone.flatMap(Zone::fromMm);
    Optional<Quantity> to = zone.flatMap(Zone::toMm);
    return from.isPresent()
        && to.isPresent()
        && scene.subject().steps().stream()
            .map(Operation::resection)
            .flatMap(Optional::stream)
            .flatMap(List::stream)
            .anyMatch(cut -> reaches(cut, from.get(), to.get()));
  }

  /** Return whether every cut of the subject certainly leaves some of the zone. */
  public static boolean impossible(Scene scene) {
    Optional<Zone> zone =
        scene.subject().latest(Finding::zone).or(() -> scene.subject().caseFile().injury().zone());
    Optional<Quantity> from = zone.flatMap(Zone::fromMm);
    Optional<Quantity> to = zone.flatMap(Zone::toMm);
    return from.isPresent()
        && to.isPresent()
        && scene.subject().steps().stream()
            .flatMap(step -> step.resection().stream().flatMap(List::stream))
            .noneMatch(cut -> mayReach(cut, from.get(), to.get()));
  }

  private static boolean mayReach(Resection cut, Quantity from, Quantity to) {
    return cut.fromMm().min() <= from.max() && cut.toMm().max() >= to.min();
  }

  private static boolean reaches(Resection cut, Quantity from, Quantity to) {
    return cut.fromMm().max() <= from.min() && cut.toMm().min() >= to.max();
  }
}
