package org.bonewright.measures.alignment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/**
 * How much of an old deformity stays: what the bone stood off before, as far as it still does. A
 * new deformity is no kept one.
 */
final class DeformityKept implements Measure {

  private static final Dimension ANY = new Dimension(0, 180, false, "");

  private final Plane plane;

  DeformityKept(Plane plane) {
    this.plane = plane;
  }

  @Override
  public Definition definition() {
    return new Definition(
        plane.id() + "-kept",
        plane.title() + ", kept from before",
        Definition.degrees(),
        "the smaller of the degrees before and those at the end, without their sign. Before: as last"
            + " found since the operation before, else as that operation left it. Where nothing sets"
            + " the bone, all of it stays",
        List.of("findings/deformity/" + plane.field(), "operations/reduction/" + plane.field()),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Quantity> before = before(scene);
    boolean sets = scene.subject().steps().stream().anyMatch(Standing::sets);
    Optional<Quantity> after = sets ? Standing.stated(scene, plane) : before;
    Dimension old = before.map(Plane::off).orElse(ANY);
    Dimension left = after.map(Plane::off).orElse(ANY);
    Dimension kept =
        new Dimension(Math.min(old.min(), left.min()), Math.min(old.max(), left.max()), false, "");
    List<MissingFact> missing = new ArrayList<>();
    if (old.min() < old.max()) {
      missing.add(
          scene.missingInCase(
              "findings/deformity/coronalDeg",
              "How many degrees does the bone stand off now: varus or valgus, to the front or"
                  + " back, and in rotation?"));
    }
    if (sets && left.min() < left.max()) {
      missing.add(Standing.missing(scene, plane));
    }
    return before.isEmpty() && after.isEmpty()
        ? new Reading.Unknown(missing)
        : Reading.number(
            kept,
            old.numbers() + "° before, " + left.numbers() + "° at the end",
            missing.toArray(MissingFact[]::new));
  }

  /** Of an operation without a day it is not known whether a finding came before or after it. */
  private Optional<Quantity> before(Scene scene) {
    List<Operation> setting = scene.subject().before().stream().filter(Standing::sets).toList();
    Optional<Operation> last =
        setting.isEmpty() ? Optional.empty() : Optional.of(setting.get(setting.size() - 1));
    List<Finding> told =
        scene.subject().findings().stream()
            .filter(finding -> finding.deformity().flatMap(plane::of).isPresent())
            .toList();
    boolean undated = last.isPresent() && last.get().day().isEmpty();
    if (undated && !told.isEmpty()) {
      return Optional.empty();
    }
    double since = last.flatMap(Operation::day).map(Quantity::middle).orElse(0.0);
    return told.stream()
        .filter(finding -> finding.day().middle() >= since)
        .flatMap(finding -> finding.deformity().flatMap(plane::of).stream())
        .findFirst()
        .or(() -> last.flatMap(Operation::reduction).flatMap(plane::of));
  }
}
