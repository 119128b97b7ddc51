package org.bonewright.casefile.checking;

import java.util.List;

/**
 * A history is no larger than any that occurs. The limits only keep an absurd file from being
 * checked for minutes.
 */
final class HistoryHasASizeThatOccurs implements Check {

  private static final int MOST_PROCEDURES = 200;
  private static final int MOST_PIECES = 2000;

  @Override
  public void look(Contents contents, Objections objections) {
    int procedures = contents.procedures().size();
    int pieces =
        contents.implants().size()
            + contents.procedures().stream()
                .mapToInt(procedure -> procedure.operation().removed().map(List::size).orElse(0))
                .sum();
    if (procedures > MOST_PROCEDURES || pieces > MOST_PIECES) {
      objections.refuse(
          At.FILE,
          procedures + " operations and stages, " + pieces + " implants and removals",
          "at most " + MOST_PROCEDURES + " and " + MOST_PIECES);
    }
  }
}
