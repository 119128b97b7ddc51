package org.bonewright.handbook.html;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bonewright.handbook.model.Entry;
import org.bonewright.handbook.model.Handbook;
import org.bonewright.markup.Markup;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;

/**
 * The page to search by: a list of everything that can be looked for, which a small script narrows.
 * Without the script the list is all there.
 */
final class SearchPage {

  static final String PATH = "search";
  static final String SCRIPT = "search.js";
  static final String INDEX = "search-index.js";

  private final Handbook handbook;

  SearchPage(Handbook handbook) {
    this.handbook = handbook;
  }

  String markup() {
    SitePage page = new SitePage(handbook, PATH);
    Markup out = page.markup();
    return page.write(
        "Search",
        () -> {
          out.say("h1", "Search");
          out.open("p", "id", "hint");
          out.words(
              "Type in the box at the head of this page, then press Enter. Without the script");
          out.words(" of this page, look in the list below or use the search of your browser.");
          out.close();
          out.open("p", "id", "count", "role", "status").words("").close();
          out.open("ol", "id", "found", "aria-label", "Found", "hidden", "hidden").close();
          out.open("div", "id", "everything");
          byLetter().forEach((letter, entries) -> letter(out, letter, entries));
          out.close();
        },
        List.of(INDEX, SCRIPT));
  }

  private Map<String, List<Entry>> byLetter() {
    return handbook.entries().stream()
        .collect(
            Collectors.groupingBy(
                entry -> entry.title().substring(0, 1).toUpperCase(Locale.ROOT),
                TreeMap::new,
                Collectors.toList()));
  }

  private static void letter(Markup out, String letter, List<Entry> entries) {
    out.open("section");
    out.say("h2", letter);
    out.open("ul", "class", "plain");
    for (Entry entry : entries) {
      out.open("li");
      out.open("a", "href", address(entry)).words(entry.title()).close();
      out.words(" ").say("small", entry.kind());
      out.close();
    }
    out.close().close();
  }

  /** Return the index as a script, since a page from a folder may not read any other file. */
  String index() {
    ArrayNode all = JsonMapper.builder().build().createArrayNode();
    for (Entry entry : handbook.entries()) {
      all.addObject()
          .put("kind", entry.kind())
          .put("title", entry.title())
          .put("about", entry.about())
          .put("words", entry.words())
          .put("address", address(entry));
    }
    return "window.handbookIndex = " + all.toString().replace("{\"kind\"", "\n{\"kind\"") + ";\n";
  }

  private static String address(Entry entry) {
    String anchor = entry.target().anchor();
    return entry.target().page() + ".html" + (anchor.isEmpty() ? "" : "#" + anchor);
  }
}
