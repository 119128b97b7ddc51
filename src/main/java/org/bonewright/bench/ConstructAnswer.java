package org.bonewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.model.HoldOutOfConstruct;
import org.bonewright.mechanics.model.MechanicalModel;

/** Asks the model what a bench file asks, and says where the model is weak. */
final class ConstructAnswer {

  private ConstructAnswer() {}

  static BenchAnswer of(BenchFile.Construct file, FixedBone bone) {
    MechanicalModel model = new MechanicalModel(bone);
    List<BenchAnswer.AnsweredLoad> loads =
        file.loads().stream()
            .map(
                asked -> {
                  Load load = asked.load();
                  return new BenchAnswer.AnsweredLoad(
                      load, model.under(load), HoldOutOfConstruct.under(bone, load));
                })
            .toList();
    OptionalDouble opening =
        file.ask().contains(BenchFile.Construct.Ask.OPENING_MOMENT)
            ? model.openingMoment()
            : OptionalDouble.empty();
    return new BenchAnswer.OfConstruct(
        bone,
        loads,
        model.stiffness(),
        opening.isPresent() ? Optional.of(opening.getAsDouble()) : Optional.empty(),
        limits(bone));
  }

  private static List<String> limits(FixedBone bone) {
    List<String> limits = new ArrayList<>();
    limits.add(
        "Linear elastic, small movements, strength at once: no healing, no remodelling, no muscle.");
    limits.add("The bone is a straight tube of one section; its wall does not bend in on itself.");
    limits.add("One end is held, the other free: a rig that guides the other end is stiffer.");
    double radius = bone.shaft().section().outer() / 2;
    if (bone.screws().stream().anyMatch(screw -> Math.abs(screw.at()) < radius)) {
      limits.add(
          "A screw lies within one bone radius of the fracture, where plane sections do not hold.");
    }
    if (!bone.plates().isEmpty()) {
      limits.add(
          "Stress at the edge of a hole reads 10 to 15 % high; twisting of a plated gap is 5 to 17"
              + " % stiffer than told.");
    }
    if (bone.screws().stream().anyMatch(screw -> screw.head() instanceof Head.Pressed)) {
      limits.add("A plate rests on the bone under its screws only, not along its length.");
      if (bone.shaft().shearStrength().isPresent()) {
        limits.add("Screws are pulled out one by one; the load is raised anew once one is out.");
      }
    }
    if (bone.strut().isPresent()) {
      limits.add("A strut is stiffer than told: screws hold its wall at points.");
    }
    if (bone.beside().onlay().isPresent()) {
      limits.add(
          "A strut on the bone rests on it at its wires only; these neither slip nor give way.");
    }
    if (bone.nail().isPresent()) {
      limits.add(
          "A nail gives no more for its holes; play in them is a question of its own, nailPlay.");
      limits.add("A nail that has met its canal stays there while the load is raised.");
    }
    if (bone.beside().fixator().isPresent()) {
      limits.add("Clamps of a fixator are taken as rigid; a real one slips, and pins work loose.");
      limits.add(
          "Pins are stressed at the root of the thread beyond what is told: no notch counts.");
    }
    if (!bone.beside().lags().isEmpty()) {
      limits.add(
          "The head of a lag screw does not slide, and does not bear again once loose; its thread is"
              + " told by its margin, not pulled out.");
      limits.add("A lag screw that slants more than friction bears loses pull as the ends slide.");
      limits.add("A lag screw through a plate is taken as one whose head rests on the cortex.");
    }
    if (bone.compression().isPresent()) {
      limits.add("The far cortex may open later: at a moment up to a quarter larger than told.");
    }
    if (bone.fracture().filling() instanceof Filling.Touching touching && touching.friction() > 0) {
      limits.add("Friction between bone ends is taken from the whole slide, not step by step.");
    }
    return List.copyOf(limits);
  }
}
