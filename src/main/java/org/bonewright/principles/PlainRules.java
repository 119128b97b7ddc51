package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rules of all principles read as data, to tell a reader which of them fired and why not. It
 * knows just what rules may say: a word compared with words, a number compared with a limit, {@code
 * ||} between such tests, and commas. It judges nothing; a test holds that it would judge every
 * world as the compiled rules do.
 */
final class PlainRules {

  private static final Pattern RULE =
      Pattern.compile("rule \"([^\"]+)\"\\s+when(.*?)then(.*?)\\bend\\b", Pattern.DOTALL);
  private static final Pattern TOKEN =
      Pattern.compile("\"[^\"]*\"|[A-Za-z_$][A-Za-z0-9_$.]*|\\|\\||[<>=!]=|[<>(),:]");
  private static final Pattern UNMET =
      Pattern.compile("verdicts\\.unmet\\(\\s*\\$w,\\s*\"([^\"]+)\",\\s*\"([^\"]+)\"\\s*\\)");

  private final Map<String, List<PlainRule>> byPrinciple = new LinkedHashMap<>();

  private PlainRules() {}

  /** Return the rules of some files. */
  static PlainRules of(RuleFiles files) {
    return of(files.paths(".drl").stream().map(files::read).toList());
  }

  /** Return the rules of some texts; those that judge no principle are left out. */
  static PlainRules of(Collection<String> texts) {
    PlainRules rules = new PlainRules();
    for (String text : texts) {
      Matcher rule = RULE.matcher(text);
      while (rule.find()) {
        if (rule.group(2).contains("World(")) {
          rules.add(read(rule.group(1), rule.group(2), rule.group(3)));
        }
      }
    }
    return rules;
  }

  private void add(PlainRule rule) {
    byPrinciple.computeIfAbsent(rule.principle(), p -> new ArrayList<>()).add(rule);
  }

  /** Return the rules of a principle in the order of their file. */
  List<PlainRule> of(String principle) {
    return byPrinciple.getOrDefault(principle, List.of());
  }

  /** Return what the rules say of a world. */
  WorldVerdict judge(World world) {
    Verdicts verdicts = new Verdicts();
    for (PlainRule rule : of(world.principle())) {
      if (rule.fires(world)) {
        rule.fault()
            .ifPresentOrElse(
                fault -> verdicts.unmet(world, fault.severity().word(), fault.limit()),
                () -> verdicts.applies(world));
      }
    }
    return verdicts.of(world);
  }

  private static PlainRule read(String name, String when, String then) {
    Reader reader = new Reader(name, when);
    reader.skipTo("World");
    reader.take("(");
    String principle = "";
    List<List<PlainTest>> conditions = new ArrayList<>();
    do {
      if (reader.at("principle")) {
        reader.take("principle");
        reader.take("==");
        principle = reader.text();
      } else {
        conditions.add(reader.anyOf());
      }
    } while (reader.takes(","));
    reader.take(")");
    Matcher unmet = UNMET.matcher(then);
    Optional<PlainRule.Fault> fault =
        unmet.find()
            ? Optional.of(new PlainRule.Fault(Severity.of(unmet.group(1)), unmet.group(2)))
            : Optional.empty();
    return new PlainRule(name, principle, conditions, fault);
  }

  /** Reads the conditions of one rule, token by token. */
  private static final class Reader {

    private final String rule;
    private final List<String> tokens = new ArrayList<>();
    private int next;

    Reader(String rule, String text) {
      this.rule = rule;
      Matcher token = TOKEN.matcher(text);
      while (token.find()) {
        tokens.add(token.group());
      }
    }

    boolean at(String token) {
      return next < tokens.size() && tokens.get(next).equals(token);
    }

    boolean takes(String token) {
      boolean there = at(token);
      next += there ? 1 : 0;
      return there;
    }

    void take(String token) {
      if (!takes(token)) {
        throw new IllegalStateException(
            "rule " + rule + ": expected " + token + " at " + tokens.subList(next, tokens.size()));
      }
    }

    void skipTo(String token) {
      while (!takes(token)) {
        next++;
      }
    }

    String text() {
      String token = tokens.get(next++);
      if (!token.startsWith("\"")) {
        throw new IllegalStateException("rule " + rule + ": expected a text, found " + token);
      }
      return token.substring(1, token.length() - 1);
    }

    List<PlainTest> anyOf() {
      List<PlainTest> any = new ArrayList<>();
      do {
        any.add(test());
      } while (takes("||"));
      return any;
    }

    private PlainTest test() {
      if (takes("choice")) {
        return word(inBrackets());
      }
      take("value");
      String need = inBrackets();
      if (takes("!=")) {
        take("null");
        return new PlainTest.There(need);
      }
      for (PlainTest.Comparison comparison : PlainTest.Comparison.values()) {
        if (takes(comparison.sign())) {
          take("limit");
          return new PlainTest.Amount(need, comparison, inBrackets());
        }
      }
      throw new IllegalStateException("rule " + rule + ": cannot read what follows " + need);
    }

    private PlainTest word(String need) {
      if (takes("==")) {
        return new PlainTest.Word(need, true, Set.of(text()));
      }
      if (takes("!=")) {
        return new PlainTest.Word(need, false, Set.of(text()));
      }
      boolean isOne = !takes("not");
      take("in");
      take("(");
      Set<String> words = new LinkedHashSet<>();
      do {
        words.add(text());
      } while (takes(","));
      take(")");
      return new PlainTest.Word(need, isOne, words);
    }

    private String inBrackets() {
      take("(");
      String text = text();
      take(")");
      return text;
    }
  }
}
