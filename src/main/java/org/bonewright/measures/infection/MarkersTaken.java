package org.bonewright.measures.infection;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.bone.Dimension;
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

  private static final List<Function<InfectionSigns, Optional<Quantity>>> MARKERS =
      List.of(InfectionSigns::crpMgL, InfectionSigns::esrMmH, InfectionSigns::whiteCellsG9L);

  @Override
  public Definition definition() {
    return new Definition(
        "markers-taken",
        "Markers of infection taken",
        new Definition.Domain.Numbers("1", "", 0, 3, 1),
        "C-reactive protein, sedimentation rate and white cells with a value at most 30 days before;"
            + " in a plan before the latest finding. In the past one that no finding names may have been taken all the same",
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
    int taken = (int) MARKERS.stream().filter(marker -> fresh(findings, day, marker)).count();
    // In the past a marker that no finding names may still have been taken.
    int most = scene.subject().planned() ? taken : MARKERS.size();
    return Reading.number(
        new Dimension(taken, most, false, ""),
        taken + " of C-reactive protein, sedimentation rate and white cells on file",
        scene.missingInCase(
            "findings/infection/crpMgL",
            "Which of C-reactive protein, sedimentation rate and white cells were taken in the 30 days"
                + " before?"));
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
