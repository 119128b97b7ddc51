package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Quantity;

/** A screw or bolt is not seen loose or broken before it was put in. */
final class MetalStatesFollowTheOperation implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.done()) {
      Optional<Quantity> day = procedure.operation().day();
      if (day.isPresent()) {
        StateDays.of(procedure)
            .filter(seen -> Certainly.below(seen.value(), day.get()))
            .forEach(
                seen ->
                    objections.refuse(
                        seen.at(),
                        "metal seen on "
                            + Wording.day(seen.value())
                            + " and put in on "
                            + Wording.day(day.get()),
                        "the day of the operation or a later one; days count from the injury"));
      }
    }
  }
}
