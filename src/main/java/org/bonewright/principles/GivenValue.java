package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;

/** What an example gives for a need. */
public sealed interface GivenValue {

  /** Nothing is known of it. */
  record NotKnown() implements GivenValue {}

  /** There is nothing that could be read. */
  record NotThere() implements GivenValue {}

  /**
   * A number, or a range of numbers.
   *
   * @param from the smallest
   * @param to the largest; the same where the number is known
   */
  record Amount(double from, double to) implements GivenValue {}

  /**
   * A word, or words of which one is true.
   *
   * @param words at least one
   */
  record Words(List<String> words) implements GivenValue {}

  /**
   * Numbers that a model computes under sampled assumptions.
   *
   * @param percent how many of a hundred samples read each number
   */
  record Sampled(Map<Double, Integer> percent) implements GivenValue {}

  /** Read a value as an examples file writes it. */
  static GivenValue of(JsonNode value) {
    if (value.isString() && value.stringValue().equals("unknown")) {
      return new NotKnown();
    }
    if (value.isString() && value.stringValue().equals("none")) {
      return new NotThere();
    }
    if (value.isNumber()) {
      return new Amount(value.doubleValue(), value.doubleValue());
    }
    if (value.isArray() && value.size() == 2 && value.get(0).isNumber()) {
      return new Amount(value.get(0).doubleValue(), value.get(1).doubleValue());
    }
    if (value.isObject()) {
      return sampled(value);
    }
    return new Words(
        value.isArray()
            ? value.values().stream().map(JsonNode::asString).toList()
            : List.of(value.asString()));
  }

  private static Sampled sampled(JsonNode value) {
    Map<Double, Integer> percent = new TreeMap<>();
    value
        .path("share")
        .properties()
        .forEach(part -> percent.put(Double.parseDouble(part.getKey()), part.getValue().asInt()));
    List<Double> samples = new ArrayList<>();
    value.path("samples").values().forEach(sample -> samples.add(sample.doubleValue()));
    samples.forEach(sample -> percent.merge(sample, 100 / samples.size(), Integer::sum));
    return new Sampled(percent);
  }
}
