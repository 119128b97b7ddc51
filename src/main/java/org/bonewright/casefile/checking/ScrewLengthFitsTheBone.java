package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.casefile.checking.Procedure.Scene;

/**
 * No screw is absurdly long for the bone, and one that crosses two cortices is not shorter than
 * half the narrowest measured width.
 */
final class ScrewLengthFitsTheBone implements Check {

  /** A screw may run obliquely and carries the thickness of a plate besides. */
  private static final double OBLIQUE = 1.3;

  private static final double PLATE_AND_TIP = 10;
  private static final double TWO_CORTICES = 2;

  /**
   * What a screw of the bone may measure, in mm.
   *
   * @param shortest half the narrowest measured width, 0 where none was measured
   * @param longest what even an oblique screw through the widest part does not exceed
   */
  private record Limits(double shortest, double longest) {

    static Limits of(Bone bone) {
      OuterWidths widths = OuterWidths.of(bone);
      double measured = widths.widest().map(Quantity::max).orElse(0.0);
      double metaphysis = bone.metaphysealWidthMm().map(Quantity::max).orElse(0.0);
      double widest = Math.max(usualWidest(bone.name()), Math.max(measured, metaphysis));
      return new Limits(
          widths.narrowest().map(Quantity::min).orElse(0.0) / 2, OBLIQUE * widest + PLATE_AND_TIP);
    }
  }

  @Override
  public void look(Contents contents, Objections objections) {
    Bone bone = contents.file().bone();
    Limits limits = Limits.of(bone);
    for (Fitted<Plate> plate : contents.implants(Plate.class)) {
      if (plate.by().sequence().scene() != Scene.COMPANION) {
        Screws.rows(plate).forEach(row -> look(row, bone.name(), limits, objections));
      }
    }
  }

  private static void look(
      Located<ScrewRow> row, BoneName bone, Limits limits, Objections objections) {
    Optional<Quantity> length = row.value().lengthMm();
    At at = row.at().field("lengthMm");
    length
        .filter(mm -> mm.min() > limits.longest())
        .ifPresent(
            mm ->
                objections.warn(
                    at,
                    "a screw of " + Wording.mm(mm) + " in a " + Wording.words(bone),
                    "up to about " + Wording.mm(limits.longest())));
    boolean twoCortices = row.value().cortices().filter(c -> c.min() >= TWO_CORTICES).isPresent();
    length
        .filter(mm -> twoCortices && mm.max() < limits.shortest())
        .ifPresent(
            mm ->
                objections.warn(
                    at,
                    "a screw of "
                        + Wording.mm(mm)
                        + " across both cortices of a bone whose"
                        + " narrowest measured width is "
                        + Wording.mm(2 * limits.shortest()),
                    "at least about " + Wording.mm(limits.shortest()) + ", or one cortex"));
  }

  /** Return the width of the ends; for the ulna the length of a screw down the olecranon. */
  private static double usualWidest(BoneName bone) {
    return switch (bone) {
      case HUMERUS -> 65;
      case FEMUR -> 100;
      case TIBIA -> 85;
      case RADIUS -> 35;
      case ULNA -> 80;
      case CLAVICLE -> 30;
    };
  }
}
