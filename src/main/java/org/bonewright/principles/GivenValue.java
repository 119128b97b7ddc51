package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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
   * @param samples the numbers in the order of sampling
   */
  record Sampled(List<Double> samples) implements GivenValue {

    public Sampled {
      samples = List.copyOf(samples);
    }

    /** Return how many of a hundred samples read each number, the smallest number first. */
    public Map<Double, Integer> percent() {
      Map<Double, Integer> counts = new TreeMap<>();
      samples.forEach(sample -> counts.merge(sample, 1, Integer::sum));
      counts.replaceAll((sample, count) -> count * WHOLE / samples.size());
      return counts;
    }

    private static final int WHOLE = 100;
  }

  /**
   * Read a value as an examples file writes it: a number, {@code [from, to]}, a word, a list of
   * words, {@code none} or {@code unknown}. A number that a model samples is written {@code
   * {samples: [0.2, 0.4]}}, or with the percentage of samples at each number, {@code {share: {0.2:
   * 90, 0.4: 10}}}.
   *
   * @throws IllegalArgumentException if samples are written in another way
   */
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
    Set<String> fields = new TreeSet<>(value.propertyNames());
    if (fields.equals(Set.of("samples"))) {
      return new Sampled(value.get("samples").values().stream().map(GivenValue::number).toList());
    }
    if (!fields.equals(Set.of("share"))) {
      throw new IllegalArgumentException("samples or share, not " + fields);
    }
    List<Double> samples = new ArrayList<>();
    value
        .get("share")
        .properties()
        .forEach(
            part ->
                samples.addAll(
                    Collections.nCopies(
                        percent(part.getValue()), Double.parseDouble(part.getKey()))));
    if (samples.size() != Sampled.WHOLE) {
      throw new IllegalArgumentException("the shares make " + samples.size() + " %");
    }
    return new Sampled(samples);
  }

  private static double number(JsonNode value) {
    if (!value.isNumber()) {
      throw new IllegalArgumentException("no number: " + value.asString());
    }
    return value.doubleValue();
  }

  private static int percent(JsonNode value) {
    if (!value.isInt() || value.intValue() < 0) {
      throw new IllegalArgumentException("no whole percentage: " + value);
    }
    return value.intValue();
  }
}
