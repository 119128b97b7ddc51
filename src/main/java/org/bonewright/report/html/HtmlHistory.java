package org.bonewright.report.html;

import java.util.List;
import org.bonewright.markup.Markup;
import org.bonewright.review.History;

/** What the operations so far teach together. */
final class HtmlHistory {

  private HtmlHistory() {}

  static void write(Markup page, History history) {
    if (history.neverAddressed().isEmpty()
        && history.triedTwice().isEmpty()
        && history.prognosis().isEmpty()) {
      return;
    }
    HtmlReport.section(
        page,
        "What the history teaches",
        () -> {
          listed(page, "Not yet put right", history.neverAddressed());
          listed(page, "Tried twice", history.triedTwice());
          history
              .prognosis()
              .ifPresent(
                  line -> {
                    page.say("h3", "Published of the next operation");
                    page.say("p", line);
                  });
        });
  }

  private static void listed(Markup page, String title, List<String> lessons) {
    if (!lessons.isEmpty()) {
      page.say("h3", title);
      page.list("ul", lessons);
    }
  }
}
