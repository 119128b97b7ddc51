package org.bonewright.report;

import static org.bonewright.principles.VerdictKind.NOT_APPLICABLE;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.PrincipleTable;

/** The table of principles against operations, as text. */
final class TableText {

  private static final int TITLE = 46;
  private static final int LEAST = 11;

  private TableText() {}

  static void write(Page page, PrincipleTable table, boolean whole) {
    int width =
        Math.max(LEAST, table.columns().stream().mapToInt(String::length).max().orElse(LEAST) + 2);
    page.line(
        "  "
            + " ".repeat(TITLE)
            + table.columns().stream().map(c -> padded(c, width)).collect(Collectors.joining()));
    List<PrincipleTable.Row> concerned =
        table.rows().stream()
            .filter(row -> row.cells().stream().anyMatch(c -> c.verdict() != NOT_APPLICABLE))
            .toList();
    List<PrincipleTable.Row> telling =
        concerned.stream().filter(row -> whole || isTelling(row)).toList();
    for (PrincipleTable.Row row : telling) {
      page.line(
          "  "
              + padded(row.family() + " " + row.title(), TITLE)
              + row.cells().stream()
                  .map(c -> padded(cell(c) + LocalText.mark(c.local().isPresent()), width))
                  .collect(Collectors.joining()));
    }
    if (telling.size() < concerned.size()) {
      page.line(
          "  and " + (concerned.size() - telling.size()) + " that did not come back: --verbose");
    }
  }

  /** Return whether any row came back. */
  static boolean tells(PrincipleTable table) {
    return table.rows().stream().anyMatch(TableText::isTelling);
  }

  /** What was unmet more than once, or is gravely unmet in the last column. */
  private static boolean isTelling(PrincipleTable.Row row) {
    List<PrincipleTable.Cell> cells = row.cells();
    long unmet =
        cells.stream()
            .filter(c -> c.verdict() == VerdictKind.UNMET && isAtLeast(c, Severity.MINOR))
            .count();
    PrincipleTable.Cell last = cells.get(cells.size() - 1);
    boolean stillUnmet = last.verdict() == VerdictKind.UNMET && isAtLeast(last, Severity.MAJOR);
    return unmet > 1 || stillUnmet || isCriticalOpen(last, unmet);
  }

  /** What may be critical is worth its line only where it was certainly unmet before. */
  private static boolean isCriticalOpen(PrincipleTable.Cell last, long unmet) {
    return last.verdict() == VerdictKind.UNKNOWN && isAtLeast(last, Severity.CRITICAL) && unmet > 0;
  }

  private static boolean isAtLeast(PrincipleTable.Cell cell, Severity least) {
    return cell.severity().map(s -> s.compareTo(least) >= 0).orElse(false);
  }

  private static String cell(PrincipleTable.Cell cell) {
    String severity = cell.severity().map(TableText::word).orElse("");
    return switch (cell.verdict()) {
      case MET -> "met";
      case UNMET -> severity;
      case UNKNOWN -> "?" + severity.toLowerCase(Locale.ROOT);
      case NOT_APPLICABLE -> ".";
    };
  }

  private static String word(Severity severity) {
    return switch (severity) {
      case NOTE -> "note";
      case MINOR -> "minor";
      case MAJOR -> "MAJOR";
      case CRITICAL -> "CRITICAL";
    };
  }

  private static String padded(String text, int width) {
    return String.format(Locale.ROOT, "%-" + width + "s", text);
  }
}
