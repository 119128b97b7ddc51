package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Target;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.Card;
import org.bonewright.principles.Promise;
import org.bonewright.principles.RuleChanges;
import org.bonewright.principles.RuleSet;

/** The page of which version of the rule set brought which principle, and changed which verdict. */
final class HistoryPage {

  private final RuleSet rules;

  HistoryPage(RuleSet rules) {
    this.rules = rules;
  }

  static Target place(String version) {
    return new Target(Places.HISTORY, "version-" + version.replace('.', '-'));
  }

  /** Return whether a version changed a verdict of a card. */
  static boolean changes(RuleChanges.Version version, Card card) {
    return version.changed().stream().anyMatch(c -> c.principle().equals(card.id()));
  }

  /** Return a line that leads to what a version changed in a card. */
  static Text place(String version, Card card) {
    String anchor = ChangedPart.anchor(place(version).anchor(), card.id());
    return Text.of("Verdicts that became other ones: ")
        .and(Text.link("version " + version, new Target(Places.HISTORY, anchor)))
        .and(".");
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
    Map<String, RuleChanges.Version> changes = new TreeMap<>(BY_NUMBER.reversed());
    RuleChanges.built().versions().forEach(version -> changes.put(version.version(), version));
    changes.keySet().forEach(version -> versions.putIfAbsent(version, List.of()));
    List<Section> sections = new ArrayList<>();
    versions.forEach(
        (version, rows) ->
            sections.add(section(version, rows, Optional.ofNullable(changes.get(version)))));
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
                "Changes are told by what they do to verdicts: every way in which the readings of a"
                    + " principle can fall was judged by both versions. Before version "
                    + firstTold()
                    + " only new principles are named.")),
        sections);
  }

  private static String firstTold() {
    List<RuleChanges.Version> told = RuleChanges.built().versions();
    return told.get(told.size() - 1).version();
  }

  private static Section section(
      String version, List<Block.Row> rows, Optional<RuleChanges.Version> changes) {
    List<Block> blocks = new ArrayList<>();
    if (!rows.isEmpty()) {
      blocks.add(new Block.Table("New in version " + version, List.of("New", "Family"), rows));
    }
    changes
        .map(RuleChanges.Version::gone)
        .filter(gone -> !gone.isEmpty())
        .ifPresent(
            gone -> blocks.add(Block.says("No longer there: " + String.join("; ", gone) + ".")));
    if (changes.map(RuleChanges.Version::isEmpty).orElse(false) && blocks.isEmpty()) {
      blocks.add(Block.says("No verdict is another one than before."));
    }
    return new Section(
        place(version).anchor(),
        "Version " + version,
        blocks,
        changes.map(RuleChanges.Version::changed).orElse(List.of()).stream()
            .map(changed -> ChangedPart.of(place(version).anchor(), changed))
            .toList());
  }

  private static final Comparator<String> BY_NUMBER =
      Comparator.comparing(
          version -> Arrays.stream(version.split("\\.", -1)).mapToInt(Integer::parseInt).toArray(),
          Arrays::compare);
}
