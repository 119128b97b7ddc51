package org.bonewright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.bonewright.markup.Markup;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.bonewright.review.Chapter;
import org.bonewright.review.Headline;
import org.bonewright.review.Line;
import org.bonewright.review.LocalNote;
import org.bonewright.review.PrincipleTable;
import org.bonewright.review.Review;

/** The principles against the operations; each verdict unfolds to its reason. */
final class HtmlTable {

  private final Markup page;
  private final PrincipleTable table;
  private final List<Line> lines;

  HtmlTable(Markup page, Review review) {
    this.page = page;
    this.table = review.table();
    this.lines = review.chapters().stream().flatMap(HtmlTable::lines).toList();
  }

  private static Stream<Line> lines(Chapter chapter) {
    return Stream.of(
            Stream.concat(chapter.fits().stream(), chapter.others().stream())
                .flatMap(HtmlTable::lines),
            chapter.met().stream(),
            chapter.unknown().stream())
        .flatMap(found -> found);
  }

  private static Stream<Line> lines(Headline headline) {
    return Stream.concat(Stream.of(headline.lead()), headline.nested().stream());
  }

  void write() {
    page.say(
        "p",
        "Capital letters: unmet. Open: cannot be judged yet. n/a: not applicable. Unfold a verdict to"
            + " read its reason."
            + (table.isLocal() ? " Asterisk: a local limit or severity." : ""));
    page.say("p", "hint", "The table may be wider than the window: scroll it sideways.");
    page.wideTable(
        "Principles by operation",
        "Principle",
        table.columns(),
        () -> table.rows().forEach(this::row));
  }

  private void row(PrincipleTable.Row row) {
    boolean silent = row.cells().stream().allMatch(c -> c.verdict() == VerdictKind.NOT_APPLICABLE);
    if (silent) {
      return;
    }
    page.in(
        "tr",
        () -> {
          page.open("th", "scope", "row").words(row.title()).close();
          for (int i = 0; i < row.cells().size(); i++) {
            cell(row.principle(), table.columns().get(i), row.cells().get(i));
          }
        });
  }

  private void cell(String principle, String column, PrincipleTable.Cell cell) {
    List<String> reasons = reasons(principle, column);
    cell.local()
        .map(LocalNote::inWords)
        .ifPresent(note -> reasons.add("Local limits. " + note + "."));
    String shown = shown(cell) + (cell.local().isPresent() ? "*" : "");
    if (reasons.isEmpty()) {
      page.say("td", cell.verdict().name().toLowerCase(Locale.ROOT), shown);
      return;
    }
    page.in(
        "td",
        cell.verdict().name().toLowerCase(Locale.ROOT),
        () ->
            page.in(
                "details",
                () -> {
                  page.say("summary", shown);
                  reasons.forEach(reason -> page.say("p", reason));
                }));
  }

  private static String shown(PrincipleTable.Cell cell) {
    return switch (cell.verdict()) {
      case MET -> "met";
      case UNMET -> cell.severity().map(Severity::word).orElse("unmet").toUpperCase(Locale.ROOT);
      case UNKNOWN ->
          "open" + cell.severity().map(worst -> ", at worst " + worst.word()).orElse("");
      case NOT_APPLICABLE -> "n/a";
    };
  }

  private List<String> reasons(String principle, String column) {
    List<String> reasons = new ArrayList<>();
    for (Line line : lines) {
      boolean here = line.subject().equals(column) || line.subject().startsWith(column + "/");
      if (here && line.principle().equals(principle)) {
        String where = line.subject().equals(column) ? "" : line.subject() + ": ";
        String share = line.shareBeside().map(beside -> " [" + beside + "]").orElse("");
        reasons.add(where + line.words() + share);
      }
    }
    return reasons;
  }
}
