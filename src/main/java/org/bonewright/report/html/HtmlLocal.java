package org.bonewright.report.html;

import java.util.List;
import java.util.stream.Stream;
import org.bonewright.markup.Markup;
import org.bonewright.review.LocalLimits;

/** What a site has set, as a section of the page. */
final class HtmlLocal {

  private HtmlLocal() {}

  static void write(Markup page, LocalLimits local) {
    HtmlReport.section(
        page,
        "Local limits",
        () -> {
          page.say("p", local.inShort() + ".");
          page.list(
              "ul",
              Stream.concat(
                      local.inUse().stream().map(HtmlLocal::used),
                      local.elsewhere().stream().map(HtmlLocal::elsewhere))
                  .toList());
        });
  }

  private static String used(LocalLimits.InUse used) {
    List<String> differing = used.differing().stream().map(LocalLimits.Differing::inWords).toList();
    return used.change().title()
        + ". "
        + used.change().inWords()
        + "."
        + (differing.isEmpty() ? "" : " " + String.join("; ", differing) + ".");
  }

  private static String elsewhere(LocalLimits.Differing verdict) {
    return verdict.title() + ", which counts the above. " + verdict.inWords() + ".";
  }
}
