package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Outcome;
import org.bonewright.casefile.Quantity;

/**
 * An outcome is not known before its operation is done, and an interval that is stated agrees with
 * the days, to a week.
 */
final class OutcomesFollowTheirOperation implements Check {

  private static final double WEEK = 7;

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
    } else if (day.isPresent() && known.isPresent()) {
      procedure
          .operation()
          .outcome()
          .flatMap(Outcome::weeksAfter)
          .ifPresent(weeks -> agree(procedure, weeks, day.get(), known.get(), objections));
    }
  }

  private static void agree(
      Procedure procedure, Quantity weeks, Quantity day, Quantity known, Objections objections) {
    double fewest = Math.max(0, known.min() - day.max()) / WEEK;
    double most = Math.max(0, known.max() - day.min()) / WEEK;
    if (weeks.max() < fewest - 1 || weeks.min() > most + 1) {
      objections.refuse(
          procedure.at().field("outcome").field("weeksAfter"),
          "an outcome "
              + Wording.number(weeks)
              + " weeks after the operation, with the operation on "
              + Wording.day(day)
              + " and the outcome on "
              + Wording.day(known),
          "an interval that agrees with the two days to a week, or only one of both");
    }
  }
}
