package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Quantity;

/** Each operation that was done has its day, and none is listed after a later one. */
final class OperationsStandInOrderOfDay implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (List<Procedure> sequence : contents.sequences()) {
      sequence.stream()
          .filter(procedure -> !procedure.isPlanned())
          .forEach(procedure -> look(procedure, sequence, objections));
    }
  }

  private static void look(Procedure procedure, List<Procedure> sequence, Objections objections) {
    At at = procedure.at().field("day");
    Optional<Quantity> day = procedure.operation().day();
    if (day.isEmpty()) {
      objections.refuse(
          at,
          "no day of an operation that was done",
          "the day after the injury, or a range of days where it is not known exactly");
      return;
    }
    sequence.stream()
        .limit(procedure.index())
        .filter(earlier -> isLater(earlier, day.get()))
        .findFirst()
        .ifPresent(
            earlier ->
                objections.refuse(
                    at,
                    Wording.day(day.get())
                        + ", listed after "
                        + earlier.operation().id()
                        + " of "
                        + Wording.day(earlier.operation().day().orElseThrow()),
                    "operations in order of day"));
  }

  private static boolean isLater(Procedure listedBefore, Quantity day) {
    return listedBefore.operation().day().filter(other -> Certainly.below(day, other)).isPresent();
  }
}
