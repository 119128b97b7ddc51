package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Run;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Glossary;

/**
 * Leads the first use of each term on a page to the glossary. Headings and links are left alone.
 */
final class TermLinks {

  private final Map<String, Glossary.Term> byForm = new HashMap<>();
  private final Pattern forms;

  TermLinks(Glossary glossary) {
    for (Glossary.Term term : glossary.terms()) {
      Stream.concat(Stream.of(term.name()), term.also().stream())
          .forEach(form -> byForm.put(key(form), term));
    }
    String any =
        byForm.keySet().stream()
            .sorted(Comparator.comparing(String::length).reversed().thenComparing(form -> form))
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));
    forms =
        Pattern.compile("(?<![\\p{L}\\p{N}-])(?:" + any + ")(?!\\p{L})", Pattern.CASE_INSENSITIVE);
  }

  private static String key(String form) {
    return form.toLowerCase(Locale.ROOT);
  }

  /** A short form is written with its capitals, a word with or without one at its head. */
  private static boolean isWritten(Glossary.Term term, String used) {
    return Stream.concat(Stream.of(term.name()), term.also().stream())
        .anyMatch(form -> isShort(form) ? form.equals(used) : form.equalsIgnoreCase(used));
  }

  private static boolean isShort(String form) {
    return form.equals(form.toUpperCase(Locale.ROOT));
  }

  /** Return a page with links to the glossary. */
  Page on(Page page) {
    Marks marks = new Marks();
    return new Page(
        page.path(),
        page.kind(),
        page.title(),
        page.lead().stream().map(marks::block).toList(),
        page.sections().stream().map(marks::section).toList());
  }

  /** What was marked on one page so far. */
  private final class Marks {

    private final Set<String> seen = new HashSet<>();

    Section section(Section section) {
      List<Block> blocks = section.blocks().stream().map(this::block).toList();
      List<Section> parts = section.parts().stream().map(this::section).toList();
      return new Section(section.anchor(), section.title(), blocks, parts);
    }

    Block block(Block block) {
      if (block instanceof Block.Paragraph paragraph) {
        return new Block.Paragraph(text(paragraph.text()));
      }
      if (block instanceof Block.Bullets bullets) {
        return new Block.Bullets(texts(bullets.entries()));
      }
      if (block instanceof Block.Facts facts) {
        return new Block.Facts(
            facts.facts().stream()
                .map(fact -> new Block.Fact(fact.name(), text(fact.value())))
                .toList());
      }
      if (block instanceof Block.Table table) {
        return table(table);
      }
      if (block instanceof Block.Tables tables) {
        return new Block.Tables(tables.tables().stream().map(this::table).toList());
      }
      if (block instanceof Block.Beside beside) {
        return new Block.Beside(view(beside.one()), view(beside.other()));
      }
      return new Block.Caution(texts(((Block.Caution) block).says()));
    }

    private Block.View view(Block.View view) {
      return new Block.View(view.title(), texts(view.says()));
    }

    private Block.Table table(Block.Table table) {
      return new Block.Table(
          table.caption(),
          table.heads(),
          table.rows().stream()
              .map(row -> new Block.Row(row.anchor(), texts(row.cells())))
              .toList());
    }

    private List<Text> texts(List<Text> texts) {
      return texts.stream().map(this::text).toList();
    }

    private Text text(Text text) {
      List<Run> runs = new ArrayList<>();
      for (Run run : text.runs()) {
        if (run instanceof Run.Plain plain) {
          plain(runs, plain.words());
        } else {
          runs.add(run);
        }
      }
      return new Text(runs);
    }

    private void plain(List<Run> runs, String words) {
      Matcher form = forms.matcher(words);
      int from = 0;
      while (form.find()) {
        Glossary.Term term = byForm.get(key(form.group()));
        if (term == null || !isWritten(term, form.group()) || !seen.add(term.name())) {
          continue;
        }
        if (form.start() > from) {
          runs.add(new Run.Plain(words.substring(from, form.start())));
        }
        runs.add(new Run.Term(form.group(), Places.term(term.name())));
        from = form.end();
      }
      if (from < words.length()) {
        runs.add(new Run.Plain(words.substring(from)));
      }
    }
  }
}
