package org.bonewright.principles;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Examples.CaseLine;
import org.bonewright.principles.Examples.Line;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Reads the examples file of a card. It has four parts:
 *
 * <ul>
 *   <li>{@code usually}: what a line gives where it says nothing else. A need that neither names is
 *       unknown.
 *   <li>{@code table}: lines with {@code say}, {@code given}, {@code expect}.
 *   <li>{@code scales}: the same {@code along} one need, with an expectation for each number.
 *   <li>{@code cases}: {@code say}, {@code base}, {@code patch}, {@code on}, {@code read}, {@code
 *       expect}.
 * </ul>
 *
 * <p>Unknown fields, unknown needs and lines that give the same as another are refused; two scales
 * may cross.
 */
final class ExamplesReader {

  private static final ObjectMapper YAML =
      YAMLMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
  private static final ObjectMapper JSON = new JsonMapper();

  private final Card card;
  private final Map<String, Given> needs = new TreeMap<>();
  private final Set<Object> seen = new HashSet<>();

  ExamplesReader(Card card, Function<String, Definition> definitions) {
    this.card = card;
    card.needs()
        .forEach((need, measure) -> needs.put(need, new Given(need, definitions.apply(measure))));
  }

  Examples read(String yaml) {
    JsonNode root = YAML.readTree(yaml);
    only(root, "usually", "table", "scales", "cases");
    Map<String, Reading> usually = new TreeMap<>();
    needs.forEach((need, given) -> usually.put(need, given.unknown()));
    usually.putAll(given(root.path("usually")));
    List<Line> lines = new ArrayList<>();
    root.path("scales").values().forEach(node -> lines.addAll(scale(node, usually)));
    root.path("table").values().forEach(node -> lines.add(line(node, usually)));
    List<CaseLine> cases = root.path("cases").values().stream().map(this::caseLine).toList();
    Stream.concat(lines.stream().map(Line::say), cases.stream().map(CaseLine::say))
        .forEach(say -> once(say, say));
    return new Examples(List.copyOf(lines), cases);
  }

  private Line line(JsonNode node, Map<String, Reading> usually) {
    only(node, "say", "given", "expect");
    Map<String, Reading> readings = with(usually, given(node.path("given")));
    once(readings, text(node, "say"));
    return new Line(text(node, "say"), readings, text(node, "expect"));
  }

  private List<Line> scale(JsonNode node, Map<String, Reading> usually) {
    only(node, "say", "given", "along", "expect");
    String along = text(node, "along");
    Map<String, Reading> readings = with(usually, given(node.path("given")));
    readings.remove(along);
    once(Map.of(along, readings), text(node, "say"));
    List<Line> lines = new ArrayList<>();
    for (Map.Entry<String, JsonNode> step : node.path("expect").properties()) {
      Reading number = need(along).number(Double.parseDouble(step.getKey()));
      Map<String, Reading> there = with(readings, Map.of(along, number));
      seen.add(there);
      String say = text(node, "say") + ", " + along + " " + step.getKey();
      lines.add(new Line(say, there, step.getValue().asString()));
    }
    return lines;
  }

  private CaseLine caseLine(JsonNode node) {
    only(node, "say", "base", "patch", "on", "read", "expect");
    Map<String, String> read = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> need : node.path("read").properties()) {
      need(need.getKey());
      read.put(need.getKey(), need.getValue().asString());
    }
    String patch = node.has("patch") ? JSON.writeValueAsString(node.get("patch")) : "[]";
    once(List.of(text(node, "base"), patch, text(node, "on")), text(node, "say"));
    return new CaseLine(
        text(node, "say"), text(node, "base"), patch, text(node, "on"), read, text(node, "expect"));
  }

  private Map<String, Reading> given(JsonNode node) {
    Map<String, Reading> given = new TreeMap<>();
    node.properties().forEach(e -> given.put(e.getKey(), need(e.getKey()).of(e.getValue())));
    return given;
  }

  private static Map<String, Reading> with(
      Map<String, Reading> readings, Map<String, Reading> changes) {
    Map<String, Reading> all = new TreeMap<>(readings);
    all.putAll(changes);
    return all;
  }

  private Given need(String name) {
    Given need = needs.get(name);
    if (need == null) {
      throw refused("no need " + name);
    }
    return need;
  }

  private void once(Object example, String say) {
    if (!seen.add(example)) {
      throw refused("\"" + say + "\" repeats another example");
    }
  }

  private String text(JsonNode node, String field) {
    if (!node.has(field)) {
      throw refused(field + " is missing in " + node);
    }
    return node.get(field).asString();
  }

  private void only(JsonNode node, String... fields) {
    Set<String> other = new TreeSet<>(node.propertyNames());
    other.removeAll(Set.of(fields));
    if (!other.isEmpty()) {
      throw refused("unknown " + other);
    }
  }

  private IllegalArgumentException refused(String why) {
    return new IllegalArgumentException("examples of " + card.id() + ": " + why);
  }
}
