package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Every way in which one rule of precedence could be slightly wrong, each alone. */
final class PrecedenceMutants {

  private static final Pattern TRUE_OR_NOT = Pattern.compile("!?\\w+");
  private static final Pattern LIST = Pattern.compile("(\\w+) (in|not in) \\((.*)\\)");
  private static final Pattern EQUAL = Pattern.compile("(\\w+) (==|!=) (.*)");
  private static final Pattern PLACE = Pattern.compile("(.*) \\+ 1\\)");
  private static final Pattern TEXT = Pattern.compile("\"([^\"]+)\"");

  /** The words that stand for something else, by what they are words of. */
  private final Map<String, List<String>> words;

  private final List<PrecedenceRule> rules;

  PrecedenceMutants(List<PrecedenceRule> rules, Collection<Family> families) {
    this.rules = rules;
    this.words =
        Map.of(
            "family", families.stream().map(Family::id).toList(),
            "verdict", Stream.of(VerdictKind.values()).map(VerdictKind::word).toList(),
            "cause", List.of("infection", "hold"));
  }

  /**
   * A rule that is slightly wrong.
   *
   * @param rule the rule as it is
   * @param what is wrong
   * @param wrong the rule as it is then; none where it is left out
   */
  record Mutant(PrecedenceRule rule, String what, Optional<PrecedenceRule> wrong) {

    String shown() {
      return rule.name() + ": " + what;
    }
  }

  /** Return all of them. */
  List<Mutant> all() {
    List<Mutant> all = new ArrayList<>();
    for (PrecedenceRule rule : rules) {
      all.add(new Mutant(rule, "left out", Optional.empty()));
      for (int i = 0; i < rule.facts().size(); i++) {
        all.addAll(ofFact(rule, i));
      }
      consequences(rule.consequence())
          .forEach(other -> all.add(new Mutant(rule, other, Optional.of(rule.with(other)))));
    }
    return all;
  }

  private List<Mutant> ofFact(PrecedenceRule rule, int index) {
    List<Mutant> mutants = new ArrayList<>();
    PrecedenceRule.Fact fact = rule.facts().get(index);
    if (!rule.decides(fact)) {
      mutants.add(new Mutant(rule, "without " + fact.variable(), Optional.of(rule.without(fact))));
    }
    for (int c = 0; c < fact.conditions().size(); c++) {
      String condition = fact.conditions().get(c);
      List<String> rest = new ArrayList<>(fact.conditions());
      rest.remove(c);
      mutants.add(new Mutant(rule, "without " + condition, Optional.of(rule.with(index, rest))));
      for (String other : others(condition)) {
        List<String> changed = new ArrayList<>(fact.conditions());
        changed.set(c, other);
        mutants.add(
            new Mutant(rule, condition + " as " + other, Optional.of(rule.with(index, changed))));
      }
    }
    return mutants;
  }

  private List<String> others(String condition) {
    Matcher list = LIST.matcher(condition);
    Matcher equal = EQUAL.matcher(condition);
    if (TRUE_OR_NOT.matcher(condition).matches()) {
      return List.of(condition.startsWith("!") ? condition.substring(1) : "!" + condition);
    }
    if (list.matches()) {
      return lists(list.group(1), list.group(2), RuleText.split(list.group(3), ","));
    }
    if (equal.matches()) {
      return compared(equal.group(1), equal.group(2), equal.group(3));
    }
    throw new IllegalStateException("no slip is known of " + condition);
  }

  /** In turned into not in, one word dropped, one word added. */
  private List<String> lists(String what, String sign, List<String> listed) {
    List<String> others = new ArrayList<>();
    others.add(list(what, sign.equals("in") ? "not in" : "in", listed));
    for (String word : listed) {
      others.add(list(what, sign, listed.stream().filter(w -> !w.equals(word)).toList()));
    }
    for (String word : words(what)) {
      if (!listed.contains('"' + word + '"')) {
        others.add(
            list(what, sign, Stream.concat(listed.stream(), Stream.of('"' + word + '"')).toList()));
      }
    }
    return others;
  }

  private static String list(String what, String sign, List<String> listed) {
    return "%s %s (%s)".formatted(what, sign, String.join(", ", listed));
  }

  private List<String> compared(String what, String sign, String with) {
    List<String> others = new ArrayList<>();
    others.add(what + (sign.equals("==") ? " != " : " == ") + with);
    Matcher text = TEXT.matcher(with);
    if (text.matches()) {
      words(what).stream()
          .filter(word -> !word.equals(text.group(1)))
          .forEach(word -> others.add("%s %s \"%s\"".formatted(what, sign, word)));
    }
    Matcher place = PLACE.matcher(with);
    if (place.matches()) {
      for (String turn : List.of("<", "<=", ">", ">=")) {
        others.add(what + " " + turn + " " + with);
      }
      for (String step : List.of(" + 0)", " + 2)", " - 1)")) {
        others.add(what + " " + sign + " " + place.group(1) + step);
      }
    }
    return others;
  }

  private List<String> words(String what) {
    List<String> known = words.get(what);
    if (known == null) {
      throw new IllegalStateException("no words are known of " + what);
    }
    return known;
  }

  private List<String> consequences(String consequence) {
    List<String> others = new ArrayList<>();
    for (PrecedenceRule rule : rules) {
      if (rule.consequence().contains(".label(")) {
        others.add(rule.consequence());
      }
    }
    if (consequence.contains(".raise(")) {
      others.add(consequence.replace("$j", "$before"));
    }
    Matcher cap =
        Pattern.compile("(decisions\\.cap\\(\\$j, )\"(\\w+)\", \"(\\w+)\"\\);")
            .matcher(consequence);
    if (cap.matches()) {
      for (Decisions.Step step : Decisions.Step.values()) {
        String word = step.name().toLowerCase(java.util.Locale.ROOT);
        others.add("%s\"%s\", \"%s\");".formatted(cap.group(1), word, cap.group(3)));
      }
      for (Severity severity : Severity.values()) {
        others.add("%s\"%s\", \"%s\");".formatted(cap.group(1), cap.group(2), severity.word()));
      }
      others.add("decisions.raise($j);");
    }
    return others.stream().filter(other -> !other.equals(consequence)).distinct().toList();
  }
}
