package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One rule of a principle as written, in the single form that is allowed: one pattern of a world,
 * one consequence.
 *
 * @param file path of the rule file
 * @param name name of the rule
 * @param conditions the constraints of the pattern
 * @param consequence the statement after {@code then}
 */
record RuleText(String file, String name, List<String> conditions, String consequence) {

  private static final Pattern RULE =
      Pattern.compile(
          "rule \"([^\"]+)\"\\s+when \\$w : World\\((.*?)\\)\\s+then (verdicts\\.[^;]*;) end",
          Pattern.DOTALL);
  private static final Pattern UNMET =
      Pattern.compile("verdicts\\.unmet\\(\\$w, \"(\\w+)\", \"(\\w+)\"\\);");
  private static final Pattern PRINCIPLE = Pattern.compile("principle == \"([^\"]+)\"");

  /** Return the paths of all files with rules of principles. */
  static List<String> files(RuleFiles files) {
    return files.paths(".drl").stream().filter(path -> !path.startsWith("precedence/")).toList();
  }

  /** Return the rules of all principles. */
  static List<RuleText> all(RuleFiles files) {
    return files(files).stream().flatMap(path -> of(path, files.read(path)).stream()).toList();
  }

  /** Return the rules in a file. */
  static List<RuleText> of(String file, String drl) {
    List<RuleText> rules = new ArrayList<>();
    Matcher rule = RULE.matcher(drl);
    while (rule.find()) {
      List<String> conditions = split(rule.group(2), ",");
      rules.add(new RuleText(file, rule.group(1), conditions, rule.group(3)));
    }
    return rules;
  }

  /** Return the id that the file is named after. */
  String id() {
    return file.substring(file.lastIndexOf('/') + 1, file.length() - ".drl".length());
  }

  /** Return the id of the principle whose worlds it takes. */
  String principle() {
    Matcher principle = PRINCIPLE.matcher(conditions.get(0));
    return principle.matches() ? principle.group(1) : "";
  }

  /** Return the conditions beside that on the principle. */
  List<String> own() {
    return conditions.subList(1, conditions.size());
  }

  /** Return whether it says when the principle applies. */
  boolean applies() {
    return consequence.equals("verdicts.applies($w);");
  }

  /** Return whether it says when the principle is unmet, with grade and limit. */
  boolean unmet() {
    return UNMET.matcher(consequence).matches();
  }

  /** Return the grade that it gives where unmet. */
  String grade() {
    return part(1);
  }

  /** Return the limit, or the condition, that it names where unmet. */
  String limit() {
    return part(2);
  }

  private String part(int group) {
    Matcher unmet = UNMET.matcher(consequence);
    if (!unmet.matches()) {
      throw new IllegalStateException(name + " does not say unmet");
    }
    return unmet.group(group);
  }

  /** Return the parts of a text between separators that stand outside brackets and quotes. */
  static List<String> split(String text, String separator) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    boolean quoted = false;
    int begin = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && c == '(') {
        depth++;
      } else if (!quoted && c == ')') {
        depth--;
      } else if (!quoted && depth == 0 && text.startsWith(separator, i)) {
        parts.add(text.substring(begin, i).strip());
        begin = i + separator.length();
      }
    }
    parts.add(text.substring(begin).strip());
    return parts;
  }

  /** Return the whole rule on one line. */
  String line() {
    return "rule \"%s\" when $w : World( %s ) then %s end"
        .formatted(name, String.join(", ", conditions).replaceAll("\\s+", " "), consequence);
  }

  /** Return the comparisons of which the conditions are made, that on the principle left out. */
  List<String> comparisons() {
    return own().stream().flatMap(condition -> comparisons(condition).stream()).toList();
  }

  private static List<String> comparisons(String condition) {
    for (String joint : List.of("||", "&&")) {
      List<String> parts = split(condition, joint);
      if (parts.size() > 1) {
        return parts.stream().flatMap(part -> comparisons(part).stream()).toList();
      }
    }
    return condition.startsWith("(") && condition.endsWith(")")
        ? comparisons(condition.substring(1, condition.length() - 1))
        : List.of(condition);
  }

  /** Return every way to leave out one part of the conditions: what was left out, what remains. */
  List<Shorter> shorter() {
    List<Shorter> all = new ArrayList<>();
    for (int i = 0; i < own().size(); i++) {
      List<String> rest = new ArrayList<>(own());
      String condition = rest.remove(i);
      all.add(new Shorter(condition, rest));
      for (Shortened part : shortened(condition)) {
        List<String> changed = new ArrayList<>(own());
        changed.set(i, part.rest());
        all.add(new Shorter(part.dropped() + " in " + condition, changed));
      }
    }
    return all;
  }

  /**
   * A rule with a part left out.
   *
   * @param dropped what was left out
   * @param conditions what remains, without the condition on the principle
   */
  record Shorter(String dropped, List<String> conditions) {}

  private record Shortened(String dropped, String rest) {}

  private static List<Shortened> shortened(String condition) {
    for (String joint : List.of("||", "&&")) {
      List<String> parts = split(condition, joint);
      if (parts.size() > 1) {
        List<Shortened> all = without(parts, " " + joint + " ", "", "");
        for (int i = 0; i < parts.size(); i++) {
          for (Shortened inner : shortened(parts.get(i))) {
            List<String> changed = new ArrayList<>(parts);
            changed.set(i, inner.rest());
            all.add(new Shortened(inner.dropped(), String.join(" " + joint + " ", changed)));
          }
        }
        return all;
      }
    }
    if (condition.startsWith("(") && condition.endsWith(")")) {
      return shortened(condition.substring(1, condition.length() - 1)).stream()
          .map(inner -> new Shortened(inner.dropped(), "(" + inner.rest() + ")"))
          .toList();
    }
    Matcher list = Pattern.compile("(.* in \\()(.*)\\)").matcher(condition);
    List<String> words = list.matches() ? split(list.group(2), ",") : List.of();
    return words.size() < 2 ? List.of() : without(words, ", ", list.group(1), ")");
  }

  private static List<Shortened> without(
      List<String> parts, String joint, String before, String after) {
    List<Shortened> all = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      List<String> rest = new ArrayList<>(parts);
      String dropped = rest.remove(i);
      all.add(new Shortened(dropped, before + String.join(joint, rest) + after));
    }
    return all;
  }
}
