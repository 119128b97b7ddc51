package org.bonewright.report;

import java.util.Locale;
import org.bonewright.review.ForceTable;

/** The forces, as text. */
final class ForceText {

  private static final int TITLE = 40;
  private static final int LEAST = 26;

  private ForceText() {}

  /** Write every number, what was not modelled, and the limits of the model; else nothing. */
  static void section(Page page, ForceTable table) {
    if (!table.tells()) {
      return;
    }
    page.title("FORCES, COMPUTED (to compare constructs, not to date a failure)");
    int width =
        Math.max(LEAST, table.columns().stream().mapToInt(String::length).max().orElse(0) + 2);
    StringBuilder heads = new StringBuilder("  " + " ".repeat(TITLE));
    table.columns().forEach(column -> heads.append(padded(column, width)));
    page.line(heads.toString());
    for (ForceTable.Row row : table.rows()) {
      String unit = row.unit().isEmpty() ? "" : ", " + row.unit();
      StringBuilder line = new StringBuilder("  " + padded(row.title() + unit, TITLE));
      row.cells().forEach(cell -> line.append(padded(cell.shown() + "  ", width)));
      page.line(line.toString());
    }
    table.notModelled().forEach(line -> page.hanging("  not modelled: ", line));
    table.limits().forEach(line -> page.hanging("  - ", line));
  }

  private static String padded(String text, int width) {
    return String.format(Locale.ROOT, "%-" + width + "s", text);
  }
}
