package org.bonewright.handbook.html;

import java.util.List;
import org.bonewright.handbook.model.Handbook;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Target;
import org.bonewright.markup.Markup;

/** One page of the site: the page itself, and the way to the others. */
final class SitePage {

  /** What stands in the bar of every page, by path and words. */
  private static final List<Target> BAR =
      List.of(
          new Target("index", "Principles"),
          new Target("measures", "Measures"),
          new Target("failures", "Failures"),
          new Target("remedies", "Remedies"),
          new Target("bibliography", "Bibliography"),
          new Target("glossary", "Glossary"),
          new Target("history", "History"));

  private static final int FEWEST_CONTENTS = 3;

  private final Handbook handbook;
  private final String path;
  private final String up;
  private final Markup out = new Markup();

  /**
   * Begin a page.
   *
   * @param handbook the handbook
   * @param path the path of the page, without ending
   */
  SitePage(Handbook handbook, String path) {
    this.handbook = handbook;
    this.path = path;
    this.up = "../".repeat((int) path.chars().filter(letter -> letter == '/').count());
  }

  /** Return the markup of a page of the handbook. */
  String of(Page page) {
    return write(
        page.title(),
        () -> {
          if (page.kind() == Page.Kind.PRINCIPLE || page.kind() == Page.Kind.PROMISE) {
            out.say("p", "kind", page.kind().word());
          }
          out.say("h1", page.title());
          BlockMarkup blocks = new BlockMarkup(out, this::address, anchor -> anchor);
          page.lead().forEach(blocks::block);
          contents(page);
          page.sections().forEach(section -> blocks.section(section, 2));
        },
        List.of());
  }

  /** Return the markup of a page with this content. */
  String write(String title, Runnable content, List<String> scripts) {
    out.open("html", "lang", "en");
    head(title, scripts);
    out.open("body", "class", path.replaceAll("/.*", ""));
    out.open("a", "class", "skip", "href", "#content").words("Skip to the content").close();
    out.in("header", this::bar);
    out.open("main", "id", "content", "tabindex", "-1");
    content.run();
    out.close();
    out.in("footer", this::foot);
    out.close().close();
    return "<!DOCTYPE html>\n" + out.text() + "\n";
  }

  Markup markup() {
    return out;
  }

  private void head(String title, List<String> scripts) {
    out.open("head");
    out.open("meta", "charset", "utf-8").close();
    out.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").close();
    out.say("title", path.equals("index") ? title : title + " – " + Handbook.NAME);
    out.open("link", "rel", "stylesheet", "href", up + SiteFiles.STYLE).close();
    for (String script : scripts) {
      out.open("script", "src", up + script, "defer", "defer").words("").close();
    }
    out.close();
  }

  private void bar() {
    out.in(
        "p", "name", () -> out.open("a", "href", up + "index.html").words(Handbook.NAME).close());
    out.open("nav", "aria-label", "Handbook");
    out.in(
        "ul",
        () -> {
          for (Target entry : BAR) {
            out.open("li");
            if (entry.page().equals(path)) {
              out.open("a", "href", address(Target.page(entry.page())), "aria-current", "page");
            } else {
              out.open("a", "href", address(Target.page(entry.page())));
            }
            out.words(entry.anchor()).close().close();
          }
        });
    out.close();
    out.open("form", "role", "search", "action", up + "search.html", "method", "get");
    out.open("label", "for", "q").words("Search").close();
    out.open(
            "input",
            "id",
            "q",
            "name",
            "q",
            "type",
            "search",
            "autocomplete",
            "off",
            "spellcheck",
            "false")
        .close();
    out.open("button", "type", "submit").words("Find").close();
    out.close();
  }

  private void contents(Page page) {
    if (page.sections().size() < FEWEST_CONTENTS) {
      return;
    }
    out.open("nav", "class", "contents", "aria-label", "On this page");
    out.say("h2", "On this page");
    out.in(
        "ul",
        () -> {
          for (Section section : page.sections()) {
            out.open("li");
            out.open("a", "href", "#" + section.anchor()).words(section.title()).close();
            out.close();
          }
        });
    out.close();
  }

  private void foot() {
    handbook.cautions().forEach(caution -> out.say("p", caution.words()));
    out.in(
        "p",
        () -> {
          out.words(handbook.edition() + ". ");
          out.open("a", "href", up + SiteFiles.PDF).words("The same as one PDF").close();
        });
  }

  private String address(Target target) {
    String anchor = target.anchor().isEmpty() ? "" : "#" + target.anchor();
    return target.page().equals(path) && !anchor.isEmpty()
        ? anchor
        : up + target.page() + ".html" + anchor;
  }
}
