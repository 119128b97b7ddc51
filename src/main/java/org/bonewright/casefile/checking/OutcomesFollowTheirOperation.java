package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;

/** An outcome is not known before its operation is done. */
final class OutcomesFollowTheirOperation implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    contents.done().forEach(procedure -> look(procedure, objections));
  }

  private static void look(Procedure procedure, Objections objections) {
    Optional<Quantity> day = procedure.operation().day();
    Optional<Quantity> known = procedure.operation().outcome().flatMap(Outcome::day);
    if (day.isPresent() && known.isPresent() && Certainly.below(known.get(), day.get())) {
      objections.refuse(
          procedure.at().field("outcome").field("day"),
          "an outcome on "
              + Wording.day(known.get())
              + " of an operation on "
              + Wording.day(day.get()),
          "the day of the operation or a later one; days count from the injury");
    }
  }
}
