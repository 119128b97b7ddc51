package org.bonewright.measures.host;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How long a patient who stopped smoking has not smoked. */
final class SmokeFreeDays implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "smoke-free-days",
        "Days without smoking",
        new Definition.Domain.Numbers("d", "days", 0, Double.POSITIVE_INFINITY, 0),
        "from the day on which smoking stopped to the operation; in a plan to the latest finding,"
            + " since the day of the operation is not settled. None for others",
        List.of("smoking", "findings/host/smokingStoppedDay", "operations/day", "findings/day"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (!scene.possibly("smoking", "stopped")) {
      return new Reading.None("not one who stopped");
    }
    MissingFact missing =
        scene.missingInCase(
            "findings/host/smokingStoppedDay", "On which day did the patient stop smoking?");
    Optional<Quantity> stopped =
        scene.subject().latest(finding -> finding.host().flatMap(Host::smokingStoppedDay));
    Optional<Quantity> until =
        scene.subject().planned()
            ? scene.subject().findings().stream().findFirst().map(Finding::day)
            : scene.operation().day();
    if (stopped.isEmpty() || until.isEmpty()) {
      return Reading.unknown(missing);
    }
    return Reading.number(
        new Dimension(
            Math.max(0, until.get().min() - stopped.get().max()),
            Math.max(0, until.get().max() - stopped.get().min()),
            false,
            ""),
        "day "
            + Dimension.stated(until.get(), "").numbers()
            + " less day "
            + Dimension.stated(stopped.get(), "").numbers(),
        missing);
  }
}
