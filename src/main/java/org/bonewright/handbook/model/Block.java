package org.bonewright.handbook.model;

import java.util.List;

/** A part of a section. None is ever empty. */
public sealed interface Block {

  /** A paragraph. */
  record Paragraph(Text text) implements Block {
    public Paragraph {
      full(!text.words().isBlank(), "paragraph");
    }
  }

  /** A list whose order says nothing. */
  record Bullets(List<Text> entries) implements Block {
    public Bullets {
      entries = List.copyOf(entries);
      full(!entries.isEmpty(), "list");
    }
  }

  /** Names with what stands for each. */
  record Facts(List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
      full(!facts.isEmpty(), "facts");
    }
  }

  /**
   * One fact.
   *
   * @param name what it is of
   * @param value what stands for it
   */
  record Fact(String name, Text value) {}

  /**
   * A table. The first cell of each row is its head.
   *
   * @param caption what it shows
   * @param heads the heads of the columns
   * @param rows its rows
   */
  record Table(String caption, List<String> heads, List<Row> rows) implements Block {
    public Table {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
      full(!rows.isEmpty(), "table");
      for (Row row : rows) {
        full(row.cells().size() == heads.size(), "column of " + caption);
      }
    }
  }

  /**
   * A row of a table.
   *
   * @param anchor by which others lead to it, empty for none
   * @param cells its cells, as many as the table has heads
   */
  record Row(String anchor, List<Text> cells) {
    public Row {
      cells = List.copyOf(cells);
    }

    /** Return a row that nobody leads to. */
    public static Row of(Text... cells) {
      return new Row("", List.of(cells));
    }
  }

  /** Several small tables that stand side by side where there is room. */
  record Tables(List<Table> tables) implements Block {
    public Tables {
      tables = List.copyOf(tables);
      full(!tables.isEmpty(), "tables");
    }
  }

  /** Two views, side by side, neither before the other. */
  record Beside(View one, View other) implements Block {}

  /**
   * A view.
   *
   * @param title whose it is
   * @param says what it says
   */
  record View(String title, List<Text> says) {
    public View {
      says = List.copyOf(says);
      full(!says.isEmpty(), "view");
    }
  }

  /** What must not be overlooked. */
  record Caution(List<Text> says) implements Block {
    public Caution {
      says = List.copyOf(says);
      full(!says.isEmpty(), "caution");
    }
  }

  /** Return a paragraph of plain words. */
  static Block says(String words) {
    return new Paragraph(Text.of(words));
  }

  private static void full(boolean isFull, String what) {
    if (!isFull) {
      throw new IllegalArgumentException("an empty " + what);
    }
  }
}
