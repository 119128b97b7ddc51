package org.bonewright.report.html;

import java.util.List;
import org.bonewright.markup.Markup;
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
          page.wideTable(
              "Forces by operation",
              "Number",
              table.columns(),
              () -> table.rows().forEach(row -> row(page, row)));
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
