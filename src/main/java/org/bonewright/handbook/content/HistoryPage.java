package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Target;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Card;
import org.bonewright.principles.Promise;
import org.bonewright.principles.RuleSet;

/** The page of which version of the rule set brought which principle. */
final class HistoryPage {

  private final RuleSet rules;

  HistoryPage(RuleSet rules) {
    this.rules = rules;
  }

  static Target place(String version) {
    return new Target(Places.HISTORY, "version-" + version.replace('.', '-'));
  }

  Page page() {
    Map<String, List<Block.Row>> versions = new TreeMap<>(BY_NUMBER.reversed());
    for (Card card : rules.cards()) {
      versions
          .computeIfAbsent(card.since(), version -> new ArrayList<>())
          .add(Block.Row.of(Places.link(card), Text.of(rules.family(card).title())));
    }
    for (Promise promise : rules.promises()) {
      versions
          .computeIfAbsent(promise.since(), version -> new ArrayList<>())
          .add(
              Block.Row.of(
                  Places.link(promise), Text.of(rules.family(promise).title() + ", a promise")));
    }
    List<Section> sections = new ArrayList<>();
    versions.forEach(
        (version, rows) ->
            sections.add(
                Section.of(
                    place(version).anchor(),
                    "Version " + version,
                    new Block.Table("New in version " + version, List.of("New", "Family"), rows))));
    return new Page(
        Places.HISTORY,
        Page.Kind.LIST,
        "History",
        List.of(
            Block.says(
                "Which version of the rule set brought which principle. This handbook shows version "
                    + rules.version()
                    + ", content "
                    + rules.hash()
                    + "."),
            Block.says(
                "Cards name the version that brought them, and no later change; a version that"
                    + " brought nothing new does not stand here.")),
        sections);
  }

  private static final Comparator<String> BY_NUMBER =
      Comparator.comparing(
          version -> Arrays.stream(version.split("\\.", -1)).mapToInt(Integer::parseInt).toArray(),
          Arrays::compare);
}
