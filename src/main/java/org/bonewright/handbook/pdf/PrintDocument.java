package org.bonewright.handbook.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.handbook.html.BlockMarkup;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Handbook;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Target;
import org.bonewright.markup.Markup;

/** The handbook as one page of XHTML, from which the PDF is made. */
final class PrintDocument {

  /** What is there to browse, and would only make a printed book thick. */
  private static final Set<String> LEFT_OUT = Set.of("near-cause", "near-family");

  private final Handbook handbook;
  private final Markup out = new Markup();

  PrintDocument(Handbook handbook) {
    this.handbook = handbook;
  }

  /** Return the markup. */
  String markup() {
    out.open("html", "lang", "en");
    head();
    out.open("body");
    cover();
    contents();
    handbook.pages().forEach(this::page);
    out.close().close();
    return out.text();
  }

  private void head() {
    out.open("head");
    out.say("title", Handbook.NAME);
    out.open("meta", "name", "subject", "content", handbook.edition()).close();
    out.open("meta", "name", "description", "content", "Principles, measures, sources and terms");
    out.close();
    out.open("meta", "name", "author", "content", "Bonewright").close();
    out.say("style", style());
    bookmarks();
    out.close();
  }

  private void bookmarks() {
    out.open("bookmarks");
    for (Page page : handbook.pages()) {
      out.open("bookmark", "name", shortTitle(page), "href", "#" + id(page.top())).close();
    }
    out.close();
  }

  private void cover() {
    out.open("div", "class", "cover");
    out.say("p", "name", Handbook.NAME);
    out.say("p", "about", "Principles, limits, measures, sources and terms");
    out.say("p", "edition", handbook.edition());
    out.open("div", "class", "caution");
    handbook.cautions().forEach(caution -> out.say("p", caution.words()));
    out.close();
    out.say(
        "p", "Of the examples those at the limits are printed; all stand in the pages to browse.");
    out.close();
  }

  private void contents() {
    out.open("div", "class", "toc");
    out.say("h1", "Contents");
    Page.Kind kind = Page.Kind.START;
    String family = "";
    for (Page page : handbook.pages()) {
      String group = page.kind() == Page.Kind.PRINCIPLE ? group(page) : "";
      if (!group.isEmpty() && !group.equals(family)) {
        out.say("p", "group", group);
        family = group;
      } else if (page.kind() != kind && page.kind() == Page.Kind.PROMISE) {
        out.say("p", "group", "Promises of the program");
      } else if (page.kind() != kind && page.kind() == Page.Kind.LIST) {
        out.say("p", "group", "Lists");
      }
      kind = page.kind();
      out.open("p", "class", "entry");
      out.open("a", "href", "#" + id(page.top())).words(shortTitle(page)).close();
      out.close();
    }
    out.close();
  }

  private static String group(Page page) {
    return page.lead().stream()
        .filter(Block.Facts.class::isInstance)
        .map(Block.Facts.class::cast)
        .flatMap(facts -> facts.facts().stream())
        .filter(fact -> fact.name().equals("Family"))
        .map(fact -> fact.value().words())
        .findFirst()
        .orElse("");
  }

  private static String shortTitle(Page page) {
    return page.kind() == Page.Kind.START ? "About this handbook" : page.title();
  }

  private void page(Page page) {
    BlockMarkup blocks =
        new BlockMarkup(
            out, target -> "#" + id(target), anchor -> id(new Target(page.path(), anchor)));
    out.open("div", "class", "chapter " + page.path().replaceAll("/.*", ""));
    out.open("h1", "id", id(page.top())).words(shortTitle(page)).close();
    page.lead().forEach(blocks::block);
    for (Section section : page.sections()) {
      kept(section).ifPresent(kept -> blocks.section(kept, 2));
    }
    out.close();
  }

  private static Optional<Section> kept(Section section) {
    if (section.anchor().equals(CompactExamples.ANCHOR)) {
      return CompactExamples.of(section);
    }
    List<Section> parts = section.parts().stream().flatMap(part -> kept(part).stream()).toList();
    return LEFT_OUT.contains(section.anchor()) || (section.blocks().isEmpty() && parts.isEmpty())
        ? Optional.empty()
        : Optional.of(new Section(section.anchor(), section.title(), section.blocks(), parts));
  }

  private static String id(Target target) {
    String page = target.page().replace('/', '-');
    return target.anchor().isEmpty() ? page : page + "--" + target.anchor();
  }

  private static String style() {
    try (InputStream in = PrintDocument.class.getResourceAsStream("print.css")) {
      if (in == null) {
        throw new IllegalStateException("built without print.css");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
