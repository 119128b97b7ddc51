package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.measures.Definition;
import org.bonewright.principles.RuleSet;

/** The page of sources, each with what cites it. */
final class Bibliography {

  private final RuleSet rules;
  private final Sourced sourced;

  Bibliography(RuleSet rules, Sourced sourced) {
    this.rules = rules;
    this.sourced = sourced;
  }

  Page page() {
    List<Sourced.Work> read = sourced.works(true);
    List<Sourced.Work> memory = sourced.works(false);
    return new Page(
        Places.SOURCES,
        Page.Kind.LIST,
        "Bibliography",
        List.of(
            new Block.Caution(
                List.of(
                    Text.of(
                        "No source was read as a whole. Of "
                            + read.size()
                            + " an abstract or an excerpt was read; "
                            + memory.size()
                            + " are named from memory and were not looked up."),
                    Text.of(
                        "Check a source before you rely on it. Where authors were not seen, the card"
                            + " says so."))),
            Block.says(
                "Each source stands once in its part, with what it is cited for and by whom. One"
                    + " that is cited both ways stands in both parts.")),
        List.of(
            Section.of(
                "excerpt-read", "An abstract or excerpt was read", works("Read in part", read)),
            Section.of("from-memory", "From memory", works("From memory", memory)),
            Section.of("of-measures", "Named by measures", measures())));
  }

  private static Block works(String caption, List<Sourced.Work> works) {
    return new Block.Table(
        caption,
        List.of("Source", "What it is cited for, and where"),
        works.stream()
            .map(
                work ->
                    new Block.Row(work.anchor(), List.of(Text.of(work.head()), uses(work.uses()))))
            .toList());
  }

  private static Text uses(List<Sourced.Use> uses) {
    Map<String, List<Text>> citing = new TreeMap<>();
    uses.forEach(
        use -> citing.computeIfAbsent(use.says(), says -> new ArrayList<>()).add(use.by()));
    List<Text> lines = new ArrayList<>();
    citing.forEach(
        (says, by) -> {
          String head = says.isEmpty() ? "Cited in " : Wordings.sentence(says) + " In ";
          lines.add(Text.of(head).and(Text.joined(by, ", ")).and("."));
        });
    return Text.joined(lines, " ");
  }

  private Block measures() {
    Map<String, List<Text>> named = new TreeMap<>();
    for (Definition measure : rules.definitions()) {
      named
          .computeIfAbsent(measure.source(), source -> new ArrayList<>())
          .add(Places.link(measure));
    }
    return new Block.Table(
        "Sources of the measures, in their own words",
        List.of("Source", "Measures"),
        named.entrySet().stream()
            .map(
                entry ->
                    Block.Row.of(
                        Text.of(Wordings.capital(entry.getKey())),
                        Text.joined(entry.getValue(), ", ")))
            .toList());
  }
}
