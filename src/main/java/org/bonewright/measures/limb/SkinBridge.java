package org.bonewright.measures.limb;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How much skin is left between a new incision and an old one. */
final class SkinBridge implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "skin-bridge",
        "Skin between new and old incision",
        Definition.millimetres(),
        "the least of the stages, as stated; none where no old incision is left, where the approach"
            + " is closed, where an old approach is used again, and where the bridge is stated as 0",
        List.of("operations/skinBridgeMm", "operations/approach"),
        "that the same approach means the same incision: our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("incised-before", "no")) {
      return new Reading.None("no old incision");
    }
    List<Operation> steps = scene.subject().steps();
    List<Quantity> stated =
        steps.stream()
            .flatMap(step -> step.skinBridgeMm().stream())
            .filter(bridge -> bridge.max() > 0)
            .toList();
    List<Operation> open = steps.stream().filter(step -> needsBridge(scene, step)).toList();
    MissingFact missing =
        scene.missing(
            "skinBridgeMm",
            "How much skin is left between the new incision and the nearest old one, in mm?");
    if (open.stream().anyMatch(step -> step.skinBridgeMm().isEmpty())) {
      return stated.isEmpty()
          ? Reading.unknown(missing)
          : Reading.number(new Dimension(0, most(stated), false, ""), "at most", missing);
    }
    return stated.isEmpty()
        ? new Reading.None("an old incision is used again, or none is made")
        : Reading.number(
            new Dimension(
                stated.stream().mapToDouble(Quantity::min).min().orElseThrow(),
                most(stated),
                false,
                ""),
            "as stated",
            missing);
  }

  private static double most(List<Quantity> stated) {
    return stated.stream().mapToDouble(Quantity::max).min().orElseThrow();
  }

  private static boolean needsBridge(Scene scene, Operation step) {
    Set<Operation.Approach> old =
        scene.doneBefore().stream()
            .flatMap(operation -> operation.approach().stream())
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(Operation.Approach.class)));
    old.add(Operation.Approach.CLOSED);
    Optional<Operation.Approach> approach = step.approach();
    return approach.map(way -> !old.contains(way)).orElse(true);
  }
}
