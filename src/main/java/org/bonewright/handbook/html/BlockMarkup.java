package org.bonewright.handbook.html;

import java.util.List;
import java.util.function.Function;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Run;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Target;
import org.bonewright.handbook.model.Text;
import org.bonewright.markup.Markup;

/** Writes sections and their blocks as HTML. */
public final class BlockMarkup {

  private static final int DEEPEST = 6;

  private final Markup out;
  private final Function<Target, String> address;
  private final Function<String, String> anchor;

  /**
   * Begin.
   *
   * @param out where it is written
   * @param address the address of a place, as this page calls it
   * @param anchor the id that a place on this page has in the markup
   */
  public BlockMarkup(
      Markup out, Function<Target, String> address, Function<String, String> anchor) {
    this.out = out;
    this.address = address;
    this.anchor = anchor;
  }

  /**
   * Write a section and those within it.
   *
   * @param level the level of its heading, 2 to 6
   */
  public void section(Section section, int level) {
    out.open("section", "id", anchor.apply(section.anchor()));
    out.say("h" + Math.min(level, DEEPEST), section.title());
    section.blocks().forEach(this::block);
    section.parts().forEach(part -> section(part, level + 1));
    out.close();
  }

  /** Write a block. */
  public void block(Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      out.in("p", () -> text(paragraph.text()));
    } else if (block instanceof Block.Bullets bullets) {
      list(bullets.entries());
    } else if (block instanceof Block.Facts facts) {
      facts(facts);
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.Tables tables) {
      out.in("div", "tables", () -> tables.tables().forEach(this::smallTable));
    } else if (block instanceof Block.Beside beside) {
      out.in(
          "div",
          "beside",
          () -> {
            view(beside.one());
            view(beside.other());
          });
    } else if (block instanceof Block.Caution caution) {
      out.in("div", "caution", () -> list(caution.says()));
    }
  }

  private void list(List<Text> entries) {
    out.in("ul", () -> entries.forEach(entry -> out.in("li", () -> text(entry))));
  }

  private void facts(Block.Facts facts) {
    out.in(
        "dl",
        () -> {
          for (Block.Fact fact : facts.facts()) {
            out.say("dt", fact.name());
            out.in("dd", () -> text(fact.value()));
          }
        });
  }

  private void view(Block.View view) {
    out.in(
        "div",
        "view",
        () -> {
          out.in("p", "whose", () -> out.say("strong", view.title()));
          view.says().forEach(says -> out.in("p", () -> text(says)));
        });
  }

  private void table(Block.Table table) {
    out.wide(table.caption(), () -> rows(table, "hidden"));
  }

  private void smallTable(Block.Table table) {
    rows(table, "shown");
  }

  private void rows(Block.Table table, String caption) {
    out.open("table", "class", "columns-" + table.heads().size());
    out.say("caption", caption, table.caption());
    out.in(
        "thead",
        () ->
            out.in(
                "tr",
                () ->
                    table
                        .heads()
                        .forEach(head -> out.open("th", "scope", "col").words(head).close())));
    out.in("tbody", () -> table.rows().forEach(row -> row(row, table.heads())));
    out.close();
  }

  private void row(Block.Row row, List<String> heads) {
    if (row.anchor().isEmpty()) {
      out.open("tr");
    } else {
      out.open("tr", "id", anchor.apply(row.anchor()));
    }
    out.open("th", "scope", "row");
    text(row.cells().get(0));
    out.close();
    for (int i = 1; i < row.cells().size(); i++) {
      out.open("td", "data-head", heads.get(i));
      text(row.cells().get(i));
      out.close();
    }
    out.close();
  }

  /** Write a text. */
  public void text(Text text) {
    text.runs().forEach(this::run);
  }

  private void run(Run run) {
    if (run instanceof Run.Link link) {
      out.open("a", "href", address.apply(link.target())).words(link.words()).close();
    } else if (run instanceof Run.Term term) {
      out.open("a", "class", "term", "href", address.apply(term.target()));
      out.words(term.words()).close();
    } else if (run instanceof Run.Strong strong) {
      out.say("strong", strong.words());
    } else if (run instanceof Run.Gap gap) {
      out.say("span", "gap", "‹" + gap.words() + "›");
    } else {
      out.words(run.words());
    }
  }
}
