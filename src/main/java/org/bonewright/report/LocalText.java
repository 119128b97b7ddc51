package org.bonewright.report;

import org.bonewright.review.Line;
import org.bonewright.review.LocalLimits;
import org.bonewright.review.LocalNote;

/** What a site has set, as text: its own section, and marks beside verdicts. */
final class LocalText {

  /** Stands behind a title or a verdict that a site has to do with. */
  private static final String MARK = "*";

  private LocalText() {}

  static void section(Page page, LocalLimits local) {
    page.title("LOCAL LIMITS (" + MARK + ": below, a verdict by a local limit or severity)");
    page.hanging("  ", local.inShort() + ".");
    for (LocalLimits.InUse used : local.inUse()) {
      page.hanging("  * ", used.change().title() + ". " + used.change().inWords() + ".");
      used.differing().forEach(verdict -> page.hanging("    - ", verdict.inWords()));
    }
    local
        .elsewhere()
        .forEach(
            verdict ->
                page.hanging(
                    "  - ", verdict.title() + ", which counts the above. " + verdict.inWords()));
  }

  /** Return the title of a line, marked where a site has to do with its verdict. */
  static String title(Line line) {
    return line.title() + (line.local().isPresent() ? MARK : "");
  }

  /** Return the mark of a verdict; empty where no site has to do with it. */
  static String mark(boolean local) {
    return local ? MARK : "";
  }

  /** Return what stands behind the words of a line, with a blank before it; empty for nothing. */
  static String remark(Line line) {
    return line.local().map(LocalNote::inWords).map(note -> " [" + note + "]").orElse("");
  }
}
