package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Plate.Family;
import org.bonewright.casefile.ScrewRow;

/**
 * Locking screws sit in a plate that locks. Families without a locking sister are left in peace:
 * their locking make has no name of its own in the file.
 */
final class LockingScrewsSitInLockingHoles implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    contents.implants(Plate.class).forEach(plate -> look(plate, objections));
  }

  private static void look(Fitted<Plate> plate, Objections objections) {
    Optional<Family> family = plate.implant().family();
    Optional<Family> sister = family.flatMap(LockingScrewsSitInLockingHoles::lockingSister);
    if (family.isEmpty() || sister.isEmpty()) {
      return;
    }
    Screws.rows(plate)
        .filter(row -> row.value().type() == ScrewRow.Type.LOCKING)
        .forEach(
            row ->
                objections.warn(
                    row.at().field("type"),
                    "locking screws in a plate of the family " + Wording.asWritten(family.get()),
                    "other screws, or the family " + Wording.asWritten(sister.get())));
  }

  private static Optional<Family> lockingSister(Family family) {
    return switch (family) {
      case LARGE_FRAGMENT_BROAD -> Optional.of(Family.LARGE_FRAGMENT_BROAD_LOCKING);
      case LARGE_FRAGMENT_NARROW -> Optional.of(Family.LARGE_FRAGMENT_NARROW_LOCKING);
      case SMALL_FRAGMENT -> Optional.of(Family.SMALL_FRAGMENT_LOCKING);
      case LARGE_FRAGMENT_BROAD_LOCKING,
          LARGE_FRAGMENT_NARROW_LOCKING,
          SMALL_FRAGMENT_LOCKING,
          RECONSTRUCTION,
          ONE_THIRD_TUBULAR,
          SEMI_TUBULAR,
          SHAFT_STRENGTH_2_7 ->
          Optional.empty();
    };
  }
}
