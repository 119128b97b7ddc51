package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.FailureMode;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Page;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.measures.Words;
import org.bonewright.principles.FailureTable;
import org.bonewright.principles.Prognosis;
import org.bonewright.principles.RuleSet;

/** The page of how failures are read, and of what was published of the next operation. */
final class FailuresPage {

  private final RuleSet rules;
  private final Sourced sourced;

  FailuresPage(RuleSet rules, Sourced sourced) {
    this.rules = rules;
    this.sourced = sourced;
  }

  static String anchor(FailureMode mode) {
    return "mode-" + Words.written(mode);
  }

  Page page() {
    return new Page(
        Places.FAILURES,
        Page.Kind.LIST,
        "Failures and results",
        List.of(
            Block.says(
                "How a recorded failure points to principles, which causes commonly show at which"
                    + " time, and what was published of the next operation. It orders findings and"
                    + " never makes one.")),
        List.of(
            Section.of(
                "modes",
                "By how it failed",
                Block.says(
                    "For each recorded way of failing the principles to look at, in this order."
                        + " After the textbook reading of failures, from memory."),
                modes()),
            Section.of("times", "By when it failed", times(), technical()),
            Section.of(
                "published",
                "Published results of the next operation",
                Block.says(rules.prognosis().caution()),
                published())));
  }

  private Block modes() {
    List<Block.Row> rows = new ArrayList<>();
    for (FailureMode mode : FailureMode.values()) {
      List<Text> principles =
          rules.failures().principlesOf(mode).stream()
              .flatMap(id -> rules.card(id).stream())
              .map(Places::link)
              .toList();
      rows.add(
          new Block.Row(
              anchor(mode),
              List.of(
                  Text.of(Wordings.capital(Words.of(mode))),
                  principles.isEmpty()
                      ? Text.of("no row: the mode itself is to be found out")
                      : Text.joined(principles, "; "))));
    }
    return new Block.Table(
        "Principles by mode of failure", List.of("Failed by", "Look first at"), rows);
  }

  private Block times() {
    List<Block.Row> rows = new ArrayList<>();
    for (FailureTable.Window window : rules.failures().windows()) {
      String to = Wordings.number(window.toWeeks());
      rows.add(
          Block.Row.of(
              Text.of(
                  Double.isInfinite(window.toWeeks())
                      ? "from week " + Wordings.number(window.fromWeeks())
                      : "weeks " + Wordings.number(window.fromWeeks()) + " to " + to),
              Text.of(names(window.causes()))));
    }
    return new Block.Table(
        "Causes by time of failure", List.of("After the operation", "Common causes"), rows);
  }

  private Block technical() {
    return Block.says(
        "Of these, what lies in what was built: "
            + names(rules.failures().technical())
            + ". Where nothing of it explains a failure, the search goes on to infection and"
            + " host.");
  }

  private static String names(List<String> causes) {
    return Wordings.all(causes.stream().map(Wordings::name).toList());
  }

  private Block published() {
    List<Block.Row> rows = new ArrayList<>();
    for (Prognosis.Entry entry : rules.prognosis().entries()) {
      rows.add(
          Block.Row.of(
              Text.of(Wordings.capital(entry.bone()) + next(entry)),
              Text.of(entry.say()),
              Text.link(entry.source().text(), sourced.place(entry.source())),
              Text.of(entry.source().read() ? "read in part" : "from memory")));
    }
    return new Block.Table(
        "Published results", List.of("Where", "Result", "Source", "Read or from memory"), rows);
  }

  private static String next(Prognosis.Entry entry) {
    Optional<String> way = entry.way().map(Words::of);
    Optional<String> graft = entry.graft().map(with -> with ? "with graft" : "without graft");
    String more = way.orElse("") + (way.isPresent() && graft.isPresent() ? " " : "");
    return way.isEmpty() && graft.isEmpty() ? "" : ", " + more + graft.orElse("");
  }
}
