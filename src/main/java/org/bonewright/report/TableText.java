package org.bonewright.report;

import java.util.Locale;
import java.util.stream.Collectors;
import org.bonewright.principles.Severity;
import org.bonewright.review.PrincipleTable;

/** The table of principles against operations, as text. */
final class TableText {

  private static final int TITLE = 46;
  private static final int LEAST = 8;

  private TableText() {}

  static void write(Page page, PrincipleTable table) {
    int width =
        Math.max(LEAST, table.columns().stream().mapToInt(String::length).max().orElse(LEAST) + 2);
    page.line(
        "  "
            + " ".repeat(TITLE)
            + table.columns().stream().map(c -> padded(c, width)).collect(Collectors.joining()));
    for (PrincipleTable.Row row : table.rows()) {
      page.line(
          "  "
              + padded(row.family() + " " + row.title(), TITLE)
              + row.cells().stream()
                  .map(c -> padded(cell(c), width))
                  .collect(Collectors.joining()));
    }
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
      case CRITICAL -> "CRITIC";
    };
  }

  private static String padded(String text, int width) {
    return String.format(Locale.ROOT, "%-" + width + "s", text);
  }
}
