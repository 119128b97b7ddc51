package org.bonewright.measures.infection;

import java.util.List;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;

/**
 * The time after the injury and after each operation in which CRP, ESR and white cells are raised
 * anyway: two weeks, our convention.
 */
public final class NormalReaction {

  private static final double DAYS = 14;

  private NormalReaction() {}

  /**
   * Return whether it was over when something was found.
   *
   * @param operations the operations that may have caused it; one without a day may have been the
   *     day before
   */
  public static boolean isOver(Finding finding, List<Operation> operations) {
    double day = finding.day().middle();
    return day >= DAYS
        && operations.stream()
            .map(operation -> operation.day().map(Quantity::middle).orElse(day))
            .noneMatch(done -> done <= day && day < done + DAYS);
  }
}
