package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Card;

/** The sources of a card: what was read apart from what is cited from memory. */
final class SourceLists {

  private SourceLists() {}

  static Section section(List<Card.Source> sources, Sourced sourced) {
    List<Section> parts = new ArrayList<>();
    add(parts, "sources-read", "An abstract or excerpt was read", sources, true, sourced);
    add(parts, "sources-memory", "From memory, not looked up", sources, false, sourced);
    return new Section("sources", "Sources", List.of(), parts);
  }

  private static void add(
      List<Section> parts,
      String anchor,
      String title,
      List<Card.Source> sources,
      boolean read,
      Sourced sourced) {
    List<Text> lines =
        sources.stream()
            .filter(source -> source.read() == read)
            .map(
                source ->
                    Text.link(Wordings.capital(Sourced.head(source)), sourced.place(source))
                        .and(rest(source)))
            .toList();
    if (!lines.isEmpty()) {
      parts.add(Section.of(anchor, title, new Block.Bullets(lines)));
    }
  }

  private static String rest(Card.Source source) {
    String says = Sourced.says(source);
    return says.isEmpty() ? "." : ": " + Wordings.sentence(says).replaceFirst("^.", first(says));
  }

  private static String first(String says) {
    return java.util.regex.Matcher.quoteReplacement(says.substring(0, 1));
  }

  /** Return how many were read in part, and how many are from memory. */
  static String count(List<Card.Source> sources) {
    long read = sources.stream().filter(Card.Source::read).count();
    long memory = sources.size() - read;
    if (read == 0) {
      return memory + " from memory";
    }
    return read + " read in part" + (memory == 0 ? "" : ", " + memory + " from memory");
  }
}
