package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One rule of precedence as written.
 *
 * @param name its name
 * @param facts what must stand together
 * @param consequence the statement after {@code then}
 */
record PrecedenceRule(String name, List<Fact> facts, String consequence) {

  static final String FILE = "precedence/precedence.drl";

  private static final Pattern RULE =
      Pattern.compile(
          "rule \"([^\"]+)\"\\s+when (.*?)\\s+then (decisions\\.[^;]*;) end", Pattern.DOTALL);
  private static final Pattern FACT =
      Pattern.compile("(\\$\\w+) : (\\w+)\\( (.*?) \\)(?=\\s+\\$|\\s*$)", Pattern.DOTALL);

  /**
   * One fact.
   *
   * @param variable what the rule calls it
   * @param type what kind of fact it is
   * @param conditions what is asked of it
   */
  record Fact(String variable, String type, List<String> conditions) {

    String text() {
      return "%s : %s( %s )".formatted(variable, type, String.join(", ", conditions));
    }
  }

  /** Return all of them. */
  static List<PrecedenceRule> all(RuleFiles files) {
    String drl = files.read(FILE).replaceAll("(?m)^when\\s+", "when ");
    List<PrecedenceRule> rules = new ArrayList<>();
    Matcher rule = RULE.matcher(drl);
    while (rule.find()) {
      rules.add(new PrecedenceRule(rule.group(1), facts(rule.group(2)), rule.group(3)));
    }
    if (rules.size() != drl.split("(?m)^rule \"", -1).length - 1) {
      throw new IllegalStateException("a rule of precedence is not of the one form");
    }
    return rules;
  }

  private static List<Fact> facts(String text) {
    List<Fact> facts = new ArrayList<>();
    Matcher fact = FACT.matcher(text);
    while (fact.find()) {
      facts.add(new Fact(fact.group(1), fact.group(2), RuleText.split(fact.group(3), ",")));
    }
    if (facts.size() != text.split(" : ", -1).length - 1) {
      throw new IllegalStateException("not of the one form: " + text);
    }
    return facts;
  }

  /** Return the same rule with other conditions on one fact. */
  PrecedenceRule with(int fact, List<String> conditions) {
    List<Fact> changed = new ArrayList<>(facts);
    Fact old = facts.get(fact);
    changed.set(fact, new Fact(old.variable(), old.type(), conditions));
    return new PrecedenceRule(name, changed, consequence);
  }

  /** Return the same rule with another consequence. */
  PrecedenceRule with(String other) {
    return new PrecedenceRule(name, facts, other);
  }

  /** Return the same rule without one fact and without what is asked of others because of it. */
  PrecedenceRule without(Fact gone) {
    List<Fact> left = new ArrayList<>();
    for (Fact fact : facts) {
      if (!fact.equals(gone)) {
        List<String> conditions =
            fact.conditions().stream().filter(c -> !c.contains(gone.variable() + ".")).toList();
        left.add(new Fact(fact.variable(), fact.type(), conditions));
      }
    }
    return new PrecedenceRule(name, left, consequence);
  }

  /** Return whether what the rule decides is about this fact. */
  boolean decides(Fact fact) {
    return consequence.contains(fact.variable());
  }

  /** Return the rule as it stands in a file, under another name. */
  String text(String named) {
    List<String> texts = facts.stream().map(Fact::text).toList();
    return "rule \"%s\"\nwhen\n  %s\nthen %s end\n"
        .formatted(named, String.join("\n  ", texts), consequence);
  }
}
