package org.bonewright.measures.infection;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.InfectionSigns;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many of the three markers of infection were taken shortly before. */
final class MarkersTaken implements Measure {

  private static final double FRESH_DAYS = 30;

  @Override
  public Definition definition() {
    return new Definition(
        "markers-taken",
        "Markers of infection taken",
        new Definition.Domain.Numbers("1", "", 0, 3, 1),
        "CRP, ESR and white cells with a value at most 30 days before; in a plan before the latest"
            + " finding. None for an operation of the past before which nothing on infection was"
            + " recorded",
        List.of(
            "findings/infection/crpMgL",
            "findings/infection/esrMmH",
            "findings/infection/whiteCellsG9L",
            "findings/day",
            "operations/day"),
        "Govaert et al., J Orthop Trauma 2020, for the three; the days are our convention");
  }

  @Override
  public Reading take(Scene scene) {
    List<Finding> findings = scene.subject().findings();
    Optional<Quantity> day =
        scene.subject().planned()
            ? findings.stream().findFirst().map(Finding::day)
            : scene.operation().day();
    boolean recorded = findings.stream().anyMatch(f -> f.infection().isPresent());
    if (!scene.subject().planned() && (day.isEmpty() || !recorded)) {
      return new Reading.None("nothing on infection was recorded then");
    }
    int taken =
        (int)
            Stream.<Function<InfectionSigns, Optional<Quantity>>>of(
                    InfectionSigns::crpMgL, InfectionSigns::esrMmH, InfectionSigns::whiteCellsG9L)
                .filter(marker -> fresh(findings, day, marker))
                .count();
    return Reading.number(taken, taken + " of CRP, ESR and white cells");
  }

  private static boolean fresh(
      List<Finding> findings,
      Optional<Quantity> day,
      Function<InfectionSigns, Optional<Quantity>> marker) {
    return findings.stream()
        .filter(finding -> finding.infection().flatMap(marker).isPresent())
        .anyMatch(
            finding ->
                day.map(until -> until.middle() - finding.day().middle() <= FRESH_DAYS)
                    .orElse(false));
  }
}
