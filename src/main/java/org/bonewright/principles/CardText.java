package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * A part of a card as written in YAML, asked field by field. Whatever nobody asked for is an error:
 * a card has no field that does nothing.
 */
final class CardText {

  private static final ObjectMapper YAML = new YAMLMapper();

  private final JsonNode node;
  private final String place;
  private final TreeSet<String> open;

  /** Read a text of YAML. */
  static CardText of(String yaml, String place) {
    return new CardText(YAML.readTree(yaml), place);
  }

  private CardText(JsonNode node, String place) {
    if (!node.isObject()) {
      throw new IllegalStateException(place + ": fields expected");
    }
    this.node = node;
    this.place = place;
    this.open = new TreeSet<>(node.propertyNames());
  }

  String text(String field) {
    return optional(field)
        .map(JsonNode::asString)
        .map(String::strip)
        .filter(text -> !text.isEmpty())
        .orElseThrow(() -> new IllegalStateException(place + ": " + field + " is missing"));
  }

  Optional<String> optionalText(String field) {
    return optional(field).map(JsonNode::asString).map(String::strip);
  }

  double number(String field) {
    return optional(field)
        .filter(JsonNode::isNumber)
        .map(JsonNode::asDouble)
        .orElseThrow(() -> new IllegalStateException(place + ": " + field + " is no number"));
  }

  boolean yes(String field) {
    return optional(field)
        .filter(JsonNode::isBoolean)
        .map(JsonNode::asBoolean)
        .orElseThrow(() -> new IllegalStateException(place + ": " + field + " is no yes or no"));
  }

  List<String> texts(String field) {
    return optional(field)
        .map(list -> list.values().stream().map(JsonNode::asString).map(String::strip).toList())
        .orElse(List.of());
  }

  List<CardText> parts(String field) {
    return optional(field)
        .map(list -> list.values().stream().map(n -> new CardText(n, place + "/" + field)).toList())
        .orElse(List.of());
  }

  Optional<CardText> part(String field) {
    return optional(field).map(n -> new CardText(n, place + "/" + field));
  }

  /** Return a field that maps names to texts, in order of name. */
  Map<String, String> named(String field) {
    Map<String, String> named = new TreeMap<>();
    optional(field)
        .ifPresent(
            map -> map.properties().forEach(e -> named.put(e.getKey(), e.getValue().asString())));
    return named;
  }

  /** Return a field that maps names to parts, in order of name. */
  Map<String, CardText> namedParts(String field) {
    Map<String, CardText> named = new TreeMap<>();
    optional(field)
        .ifPresent(
            map ->
                map.properties()
                    .forEach(
                        e ->
                            named.put(
                                e.getKey(),
                                new CardText(
                                    e.getValue(), place + "/" + field + "/" + e.getKey()))));
    return named;
  }

  /** Return whether a field is there. */
  boolean has(String field) {
    return node.has(field);
  }

  /** Return whether a field is a single number. */
  boolean isNumber(String field) {
    return node.path(field).isNumber();
  }

  /** Return the names of all fields, sorted. */
  List<String> fields() {
    return new TreeSet<>(node.propertyNames()).stream().toList();
  }

  /** Refuse fields that nobody asked for. */
  void done() {
    if (!open.isEmpty()) {
      throw new IllegalStateException(place + ": unknown " + open);
    }
  }

  private Optional<JsonNode> optional(String field) {
    open.remove(field);
    return Optional.of(node.path(field)).filter(n -> !n.isMissingNode() && !n.isNull());
  }
}
