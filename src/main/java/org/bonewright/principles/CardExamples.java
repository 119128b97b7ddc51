package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The examples of a principle as they are written, to be shown to people; tests hold the principle
 * to the same file. Values are by the name of the need.
 *
 * @param usually what a line gives where it says nothing else; whatever neither names is unknown
 * @param table single situations
 * @param scales situations with one number that runs
 * @param cases base cases with some changes
 */
public record CardExamples(
    Map<String, GivenValue> usually, List<Line> table, List<Scale> scales, List<CaseLine> cases) {

  private static final ObjectMapper YAML = new YAMLMapper();

  /**
   * One situation.
   *
   * @param say the situation in a few words
   * @param given what is read where it differs from what is usual
   * @param expect the verdict in shorthand
   */
  public record Line(String say, Map<String, GivenValue> given, String expect) {}

  /**
   * One situation in which one number runs.
   *
   * @param say the situation in a few words
   * @param given what else is read where it differs from what is usual
   * @param along the need whose number runs
   * @param expect the verdict in shorthand by the number, smallest first
   */
  public record Scale(
      String say, Map<String, GivenValue> given, String along, Map<String, String> expect) {}

  /**
   * A whole case.
   *
   * @param say the case in a few words
   * @param base the name of the invented case that it starts from
   * @param changes how many fields of it are changed
   * @param on the subject that is judged
   * @param read some of what is read on the way, as it is shown
   * @param expect the verdict in shorthand
   */
  public record CaseLine(
      String say, String base, int changes, String on, Map<String, String> read, String expect) {}

  /**
   * Return the examples of a card.
   *
   * @throws IllegalArgumentException if the card is not of this rule set
   */
  public static CardExamples of(RuleSet rules, Card card) {
    JsonNode root = YAML.readTree(RuleFiles.examples(rules.family(card), card.id()));
    List<Line> table = new ArrayList<>();
    root.path("table")
        .values()
        .forEach(
            node ->
                table.add(
                    new Line(text(node, "say"), given(node.path("given")), text(node, "expect"))));
    List<Scale> scales = new ArrayList<>();
    root.path("scales")
        .values()
        .forEach(
            node ->
                scales.add(
                    new Scale(
                        text(node, "say"),
                        given(node.path("given")),
                        text(node, "along"),
                        texts(node.path("expect")))));
    List<CaseLine> cases = new ArrayList<>();
    root.path("cases").values().forEach(node -> cases.add(caseLine(node)));
    return new CardExamples(given(root.path("usually")), table, scales, cases);
  }

  private static CaseLine caseLine(JsonNode node) {
    return new CaseLine(
        text(node, "say"),
        text(node, "base"),
        node.path("patch").size(),
        text(node, "on"),
        texts(node.path("read")),
        text(node, "expect"));
  }

  private static Map<String, GivenValue> given(JsonNode node) {
    Map<String, GivenValue> given = new LinkedHashMap<>();
    node.properties().forEach(field -> given.put(field.getKey(), GivenValue.of(field.getValue())));
    return given;
  }

  private static Map<String, String> texts(JsonNode node) {
    Map<String, String> texts = new LinkedHashMap<>();
    node.properties().forEach(field -> texts.put(field.getKey(), field.getValue().asString()));
    return texts;
  }

  private static String text(JsonNode node, String field) {
    if (!node.has(field)) {
      throw new IllegalStateException(field + " is missing in an example: " + node);
    }
    return node.get(field).asString();
  }
}
