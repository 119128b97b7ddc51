package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.Quantity;

/** A plate that was not bent keeps no distance; a line that is not compressed closes no gap. */
final class CompressionAgreesWithItself implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      procedure
          .operation()
          .compression()
          .ifPresent(
              compression -> look(compression, procedure.at().field("compression"), objections));
    }
  }

  private static void look(Compression compression, At at, Objections objections) {
    boolean none = compression.method() == Compression.Method.NONE;
    aboveZero(compression.prebendMm())
        .filter(mm -> compression.prebent().equals(Optional.of(Answer.NO)))
        .ifPresent(
            mm ->
                objections.refuse(
                    at.field("prebendMm"),
                    "a distance of " + Wording.mm(mm) + " under a plate that was not bent",
                    "0 mm, or a bent plate"));
    aboveZero(compression.gapBeforeMm())
        .filter(mm -> none)
        .ifPresent(
            mm ->
                objections.warn(
                    at.field("gapBeforeMm"),
                    "a gap of " + Wording.mm(mm) + " to close, without compression",
                    "a method of compression; a gap that was left belongs to the reduction"));
    aboveZero(compression.screws())
        .filter(number -> none)
        .ifPresent(
            number ->
                objections.refuse(
                    at.field("screws"),
                    "eccentric screws (" + Wording.number(number) + "), without compression",
                    "0, or a method of compression"));
  }

  private static Optional<Quantity> aboveZero(Optional<Quantity> quantity) {
    return quantity.filter(value -> value.min() > 0);
  }
}
