package org.bonewright.casefile.checking;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;
import org.bonewright.casefile.Resection;

/**
 * Shortening is old and new together: it is not less than what the operation before left and what
 * this one cut out and closed, within what films can tell.
 */
final class ShorteningCoversWhatWasCut implements Check {

  /** What a length read off two films may differ by, mm; our convention. */
  private static final double TOLERANCE = 3;

  @Override
  public void look(Contents contents, Objections objections) {
    List<Procedure> ofTheBone = contents.sequences().get(0);
    contents.sequences().forEach(sequence -> look(sequence, ofTheBone, objections));
  }

  private static void look(List<Procedure> sequence, List<Procedure> done, Objections objections) {
    boolean planned = sequence.stream().anyMatch(Procedure::isPlanned);
    double before = planned ? least(done) : 0;
    for (Procedure procedure : sequence) {
      Optional<Quantity> stated = shortening(procedure.operation());
      double closed = closed(procedure.operation());
      if (closed > 0 && stated.isPresent() && stated.get().max() + TOLERANCE < before + closed) {
        objections.refuse(
            procedure.at().field("reduction").field("shorteningMm"),
            "a shortening of "
                + Wording.number(stated.get())
                + " mm, where "
                + Wording.number(Quantity.of(before))
                + " mm before and "
                + Wording.number(Quantity.of(closed))
                + " mm cut out and closed make more",
            "the shortening against the other side, old and new together");
      }
      before = stated.map(Quantity::min).orElse(before + closed);
    }
  }

  private static double least(List<Procedure> done) {
    double left = 0;
    for (Procedure procedure : done) {
      left =
          shortening(procedure.operation())
              .map(Quantity::min)
              .orElse(left + closed(procedure.operation()));
    }
    return left;
  }

  private static Optional<Quantity> shortening(Operation operation) {
    return operation.reduction().flatMap(Reduction::shorteningMm);
  }

  /** Return what is certainly cut out and closed, mm; nothing where a gap is not recorded. */
  private static double closed(Operation operation) {
    Optional<Quantity> left = operation.reduction().flatMap(Reduction::widestGap);
    double cut = 0;
    for (Resection piece : operation.resection().orElse(List.of())) {
      cut += Math.max(0, piece.toMm().min() - piece.fromMm().max());
    }
    return left.isEmpty() ? 0 : Math.max(0, cut - left.get().max());
  }
}
