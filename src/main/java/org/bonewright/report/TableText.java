package org.bonewright.report;

import static org.bonewright.principles.VerdictKind.NOT_APPLICABLE;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bonewright.principles.Severity;
import org.bonewright.review.PrincipleTable;

/** The table of principles against operations, as text. */
final class TableText {

  private static final int TITLE = 46;
  private static final int LEAST = 11;

  private TableText() {}

  static void write(Page page, PrincipleTable table) {
    int width =
        Math.max(LEAST, table.columns().stream().mapToInt(String::length).max().orElse(LEAST) + 2);
    page.line(
        "  "
            + " ".repeat(TITLE)
            + table.columns().stream().map(c -> padded(c, width)).collect(Collectors.joining()));
    List<PrincipleTable.Row> telling =
        table.rows().stream()
            .filter(row -> row.cells().stream().anyMatch(c -> c.verdict() != NOT_APPLICABLE))
            .toList();
    for (PrincipleTable.Row row : telling) {
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
      case CRITICAL -> "CRITICAL";
    };
  }

  private static String padded(String text, int width) {
    return String.format(Locale.ROOT, "%-" + width + "s", text);
  }
}
