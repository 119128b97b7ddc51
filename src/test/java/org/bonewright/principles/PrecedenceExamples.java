package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Reads the examples of precedence. {@code usually} says what a finding is where it says nothing
 * else, for the whole file or for one example; a finding with several families stands for one of
 * each. Unknown fields are refused.
 */
final class PrecedenceExamples {

  private static final ObjectMapper YAML =
      YAMLMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
  private static final Set<String> GIVEN =
      Set.of(
          "on", "round", "principle", "family", "cause", "verdict", "disputed", "from", "highest");
  private static final Set<String> COURSE =
      Set.of("infected", "treated before", "stage after", "united");
  private static final Pattern STEP = Pattern.compile("(\\w+) to (\\w+) by (\\w+)");

  private PrecedenceExamples() {}

  /**
   * What must become of some findings that stand together.
   *
   * @param say the situation, in a few words
   * @param courses what is true of the subjects
   * @param findings every finding
   */
  record Example(String say, List<Course> courses, List<Finding> findings) {

    /** Return what rules are given; each finding once. */
    List<Object> facts() {
      Set<Object> facts = new LinkedHashSet<>(courses);
      findings.forEach(finding -> facts.add(finding.judged()));
      return List.copyOf(facts);
    }

    /** Return the findings of which some rules decide otherwise. */
    List<Finding> otherwise(Decisions decisions) {
      return findings.stream().filter(f -> !f.outcome(decisions).equals(f.expect())).toList();
    }
  }

  /**
   * A finding.
   *
   * @param judged as the rules see it
   * @param from its severity before any step; none where it cannot be unmet
   * @param highest the gravest that its principle can be
   * @param expect what must become of it
   */
  record Finding(Judged judged, Optional<Severity> from, Severity highest, Outcome expect) {

    /** Return what becomes of it. */
    Outcome outcome(Decisions decisions) {
      return new Outcome(
          decisions.labels(judged),
          from.map(base -> decisions.steps(judged, base, highest)).orElse(List.of()));
    }
  }

  /**
   * What becomes of a finding.
   *
   * @param labels its labels
   * @param steps its steps of severity
   */
  record Outcome(List<String> labels, List<SeverityStep> steps) {}

  /** Return the examples in a text. */
  static List<Example> read(String yaml) {
    JsonNode root = YAML.readTree(yaml);
    only(root, Set.of("usually", "examples"));
    return root.get("examples").values().stream()
        .map(node -> example(node, fields(root.get("usually"))))
        .toList();
  }

  private static Example example(JsonNode node, Map<String, JsonNode> usually) {
    only(node, Set.of("say", "courses", "usually", "findings"));
    Map<String, JsonNode> here = new LinkedHashMap<>(usually);
    here.putAll(fields(node.path("usually")));
    List<Finding> findings = new ArrayList<>();
    node.get("findings").values().forEach(finding -> findings.addAll(findings(finding, here)));
    Map<String, JsonNode> courses = fields(node.path("courses"));
    Set<String> subjects = new TreeSet<>(courses.keySet());
    findings.forEach(finding -> subjects.add(finding.judged().subject()));
    return new Example(
        node.get("say").asString(),
        subjects.stream().map(subject -> course(subject, words(courses.get(subject)))).toList(),
        List.copyOf(findings));
  }

  private static Course course(String subject, List<String> words) {
    if (!COURSE.containsAll(words)) {
      throw new IllegalArgumentException("unknown course " + words);
    }
    return new Course(
        subject,
        words.contains("infected"),
        words.contains("treated before"),
        words.contains("stage after"),
        words.contains("united"));
  }

  private static List<Finding> findings(JsonNode node, Map<String, JsonNode> usually) {
    Set<String> known = new TreeSet<>(GIVEN);
    known.addAll(List.of("label", "steps"));
    only(node, known);
    Map<String, JsonNode> all = new LinkedHashMap<>(usually);
    all.putAll(fields(node));
    return words(all.get("family")).stream().map(family -> finding(all, family)).toList();
  }

  private static Finding finding(Map<String, JsonNode> all, String family) {
    Judged judged =
        new Judged(
            all.get("principle").asString(),
            family,
            all.get("cause").asString(),
            all.get("on").asString(),
            all.get("round").intValue(),
            VerdictKind.of(all.get("verdict").asString()).word(),
            yes(all.get("disputed").asString()));
    String from = all.get("from").asString();
    return new Finding(
        judged,
        from.equals("none") ? Optional.empty() : Optional.of(Severity.of(from)),
        Severity.of(all.get("highest").asString()),
        new Outcome(
            words(all.get("label")),
            words(all.get("steps")).stream().map(PrecedenceExamples::step).toList()));
  }

  private static boolean yes(String word) {
    return switch (word) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw new IllegalArgumentException("neither yes nor no: " + word);
    };
  }

  private static SeverityStep step(String text) {
    Matcher step = STEP.matcher(text);
    if (!step.matches()) {
      throw new IllegalArgumentException("not a step: " + text);
    }
    return new SeverityStep(
        Decisions.Step.valueOf(step.group(3).toUpperCase(java.util.Locale.ROOT)),
        Severity.of(step.group(1)),
        Severity.of(step.group(2)));
  }

  private static Map<String, JsonNode> fields(JsonNode node) {
    Map<String, JsonNode> fields = new LinkedHashMap<>();
    node.properties().forEach(field -> fields.put(field.getKey(), field.getValue()));
    return fields;
  }

  /** Return one word or a list of them; none where there is nothing. */
  private static List<String> words(@org.jspecify.annotations.Nullable JsonNode node) {
    if (node == null) {
      return List.of();
    }
    Stream<JsonNode> words = node.isArray() ? node.values().stream() : Stream.of(node);
    return words.map(JsonNode::asString).toList();
  }

  private static void only(JsonNode node, Set<String> known) {
    if (!known.containsAll(node.propertyNames())) {
      throw new IllegalArgumentException("unknown fields in " + node);
    }
  }
}
