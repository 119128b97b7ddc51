package org.bonewright.review;

import java.util.List;
import java.util.Optional;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;

/**
 * The principles against the operations.
 *
 * @param columns ids of operations, then of plans
 * @param rows one for each principle, in the order of families
 */
public record PrincipleTable(List<String> columns, List<Row> rows) {

  /**
   * One principle.
   *
   * @param principle its id
   * @param title its title
   * @param family letter of its family
   * @param cells one for each column
   */
  public record Row(String principle, String title, String family, List<Cell> cells) {}

  /**
   * One verdict. A plan with several stages shows its worst.
   *
   * @param verdict the verdict
   * @param severity severity of what is unmet, or the worst that may be
   * @param local what a site has to do with it, if it has
   */
  public record Cell(VerdictKind verdict, Optional<Severity> severity, Optional<LocalNote> local) {}

  /** Return whether a site has to do with any verdict of the table. */
  public boolean isLocal() {
    return rows.stream().flatMap(row -> row.cells().stream()).anyMatch(c -> c.local().isPresent());
  }
}
