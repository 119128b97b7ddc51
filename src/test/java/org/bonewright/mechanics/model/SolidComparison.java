package org.bonewright.mechanics.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.construct.Load;

/** Holds the frame model to what was read from solids. */
final class SolidComparison {

  private final Solids solids;

  SolidComparison(Solids solids) {
    this.solids = solids;
  }

  /** Check by how many percent of the solid's value the model gives more. */
  void holds(double least, double most, String construct, String load, List<String> quantities) {
    LoadAnswer answer = answer(construct, load);
    for (String quantity : quantities) {
      double solid = solids.finest(construct, load, quantity);
      double percent = 100 * (read(answer, quantity) / solid - 1);
      assertThat(percent)
          .as("%s under %s: %s, percent more than the solid", construct, load, quantity)
          .isBetween(least, most);
    }
  }

  /** Return what the model says of a construct under a load, named as in solids.csv. */
  static LoadAnswer answer(String construct, String load) {
    MechanicalModel model = new MechanicalModel(SolidBones.of(construct));
    if (!(model.under(load(load)) instanceof Outcome.Answered told)) {
      throw new AssertionError("no answer for " + construct);
    }
    return told.answer();
  }

  /** Return a load by its name: a minus turns it over, {@code *3} makes it three times as large. */
  private static Load load(String name) {
    List<String> parts = List.of(name.replace("-", "").split("\\*", -1));
    Load one =
        switch (parts.get(0)) {
          case "P" -> Load.axial(0);
          case "N" -> Load.axial(-200);
          case "My" -> Load.bendingY(2500);
          case "Mx" -> Load.bendingX(1000);
          case "T" -> Load.torque(1500);
          default -> throw new IllegalArgumentException(name);
        };
    double times = parts.size() > 1 ? Double.parseDouble(parts.get(1)) : 1;
    return one.times(name.startsWith("-") ? -times : times);
  }

  /** Return one quantity of an answer, named as in solids.csv. */
  static double read(LoadAnswer answer, String quantity) {
    return switch (quantity) {
      case "end dx" -> answer.end().dx();
      case "end dy" -> answer.end().dy();
      case "end dz" -> answer.end().dz();
      case "end rx" -> answer.end().rx();
      case "end ry" -> answer.end().ry();
      case "end rz" -> answer.end().rz();
      case "gap near" -> answer.gap().near();
      case "gap far" -> answer.gap().far();
      case "gap shear" -> answer.gap().shear();
      case "plate N" -> cut(answer, 0).axial();
      case "plate Mweak" -> cut(answer, 0).weak();
      case "plate Mstrong" -> cut(answer, 0).strong();
      case "plate T" -> cut(answer, 0).torque();
      case "hole edge" -> cut(answer, 18).edge();
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static PlateCut cut(LoadAnswer answer, double level) {
    return answer.plates().get(0).stream()
        .filter(cut -> cut.z() == level)
        .findFirst()
        .orElseThrow();
  }
}
