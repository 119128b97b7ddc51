package org.bonewright.casefile.checking;

import org.bonewright.casefile.BoneQuality;
import org.bonewright.casefile.Quantity;

/** A measurement of bone quality has a value that its method can give. */
final class BoneQualityFitsItsMethod implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    At at = At.FILE.field("bone").field("quality");
    Located.each(contents.file().bone().quality(), at)
        .forEach(quality -> look(quality.value(), quality.at(), objections));
  }

  private static void look(BoneQuality quality, At at, Objections objections) {
    Quantity possible = possible(quality.method());
    if (Certainly.below(quality.value(), possible) || Certainly.below(possible, quality.value())) {
      objections.warn(
          at.field("value"),
          Wording.number(quality.value()) + " for a " + Wording.words(quality.method()),
          "values of about " + Wording.number(possible));
    }
  }

  /** Return what a method can give at all, with room to spare; from memory. */
  private static Quantity possible(BoneQuality.Method method) {
    return switch (method) {
      case DELTOID_TUBEROSITY_INDEX -> new Quantity(1, 4);
      case COMBINED_CORTICAL_THICKNESS, CORTICAL_THICKNESS -> new Quantity(0.2, 20);
      case FEMORAL_CORTICAL_INDEX -> new Quantity(0, 1);
      case DXA_T_SCORE -> new Quantity(-8, 6);
      case CT_HOUNSFIELD -> new Quantity(-200, 2500);
    };
  }
}
