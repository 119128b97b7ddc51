package org.bonewright.report.html;

import java.util.List;
import org.bonewright.review.ForceTable;

/** The forces in each construct, side by side. */
final class HtmlForces {

  private HtmlForces() {}

  /** Write the section; nothing where nothing was modelled. */
  static void write(Markup page, ForceTable table) {
    if (!table.tells()) {
      return;
    }
    HtmlReport.section(
        page,
        "Forces, computed",
        () -> {
          page.open(
              "div",
              "class",
              "wide",
              "tabindex",
              "0",
              "role",
              "region",
              "aria-label",
              "Forces by operation");
          page.open("table");
          page.in("thead", () -> page.in("tr", () -> heads(page, table)));
          page.in("tbody", () -> table.rows().forEach(row -> row(page, row)));
          page.close();
          page.close();
          page.list("ul", table.limits());
          if (!table.notModelled().isEmpty()) {
            page.say("p", "Not modelled. " + String.join(" ", sentences(table)));
          }
        });
  }

  private static List<String> sentences(ForceTable table) {
    return table.notModelled().stream()
        .map(line -> line.endsWith("?") ? line : line + ".")
        .toList();
  }

  private static void heads(Markup page, ForceTable table) {
    page.open("th", "scope", "col").words("Number").close();
    table.columns().forEach(column -> page.open("th", "scope", "col").words(column).close());
  }

  private static void row(Markup page, ForceTable.Row row) {
    page.in(
        "tr",
        () -> {
          String unit = row.unit().isEmpty() ? "" : ", " + row.unit();
          page.open("th", "scope", "row").words(row.title() + unit).close();
          row.cells().forEach(cell -> page.say("td", cell.shown()));
        });
  }
}
