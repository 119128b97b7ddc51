package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Quantity;

/**
 * The length of a plate goes with its holes: (holes − 1) × spacing fits in, and the plate is not
 * much longer than (holes + 1) × spacing, in mm. Plates with a long stretch without holes exist.
 */
final class PlateLengthFitsItsHoles implements Check {

  private static final double MUCH_LONGER = 1.25;

  @Override
  public void look(Contents contents, Objections objections) {
    contents.implants(Plate.class).forEach(plate -> look(plate, objections));
  }

  private static void look(Fitted<Plate> fitted, Objections objections) {
    Plate plate = fitted.implant();
    Optional<HoleSpacing> spacing = HoleSpacing.of(plate);
    if (plate.lengthMm().isEmpty() || plate.holes().isEmpty() || spacing.isEmpty()) {
      return;
    }
    Quantity length = plate.lengthMm().get();
    int holes = plate.holes().get();
    double least = spacing.get().atLeast(holes - 1);
    double most = MUCH_LONGER * spacing.get().atMost(holes + 1);
    if (length.max() < least || length.min() > most) {
      objections.warn(
          fitted.at().field("lengthMm"),
          "a plate of "
              + Wording.mm(length)
              + " with "
              + Wording.count(holes, "hole")
              + " "
              + Wording.mm(spacing.get().mm())
              + " apart",
          "about " + Wording.mm(new Quantity(least, most)) + " for that many holes");
    }
  }
}
