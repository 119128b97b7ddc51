package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain;
import org.bonewright.measures.Kind;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import tools.jackson.databind.JsonNode;

/**
 * Turns what an example gives for a need into a reading: a number, {@code [from, to]}, a word, a
 * list of words, {@code none} or {@code unknown}. A number that a model samples is written {@code
 * {samples: [0.2, 0.4]}}, or with the percentage of samples at each number, {@code {share: {0.2:
 * 90, 0.4: 10}}}. What the measure can never read is refused.
 */
final class Given {

  private final String need;
  private final Definition definition;

  Given(String need, Definition definition) {
    this.need = need;
    this.definition = definition;
  }

  Reading unknown() {
    return Reading.unknown(missing());
  }

  Reading number(double value) {
    return amount(value, value);
  }

  Reading of(JsonNode value) {
    if (value.isString() && value.stringValue().equals("unknown")) {
      return unknown();
    }
    if (value.isString() && value.stringValue().equals("none")) {
      return new Reading.None("none given");
    }
    if (value.isNumber()) {
      return number(value.doubleValue());
    }
    if (value.isObject()) {
      return sampled(value);
    }
    if (value.isArray() && value.size() == 2 && value.get(0).isNumber()) {
      return amount(value.get(0).doubleValue(), value.get(1).doubleValue());
    }
    List<String> words =
        value.isArray()
            ? value.values().stream().map(JsonNode::asString).toList()
            : List.of(value.asString());
    return words(words);
  }

  private Reading words(List<String> words) {
    if (!(definition.domain() instanceof Domain.Words domain)
        || !domain.words().containsAll(words)) {
      throw refused(String.join(", ", words));
    }
    return Reading.words(new TreeSet<>(words), Kind.FACT, "given", missing());
  }

  private Reading amount(double min, double max) {
    if (!(definition.domain() instanceof Domain.Numbers domain)
        || !possible(domain, min)
        || !possible(domain, max)) {
      throw refused(min == max ? "" + min : min + " to " + max);
    }
    List<MissingFact> missing = min == max ? List.of() : List.of(missing());
    return new Reading.Amount(min, max, Kind.FACT, "given", missing);
  }

  private Reading sampled(JsonNode value) {
    Set<String> fields = new TreeSet<>(value.propertyNames());
    List<Double> samples = new ArrayList<>();
    if (fields.equals(Set.of("samples"))) {
      value.get("samples").values().forEach(sample -> samples.add(number(sample)));
    } else if (fields.equals(Set.of("share"))) {
      value
          .get("share")
          .properties()
          .forEach(
              part ->
                  samples.addAll(
                      Collections.nCopies(
                          percent(part.getValue()), Double.parseDouble(part.getKey()))));
      if (samples.size() != 100) {
        throw new IllegalArgumentException(need + ": the shares make " + samples.size() + " %");
      }
    } else {
      throw new IllegalArgumentException(need + ": samples or share, not " + fields);
    }
    samples.forEach(sample -> amount(sample, sample));
    return new Reading.Sampled(
        samples.get(0), samples, "given", "what is sampled", List.of(missing()));
  }

  private double number(JsonNode value) {
    if (!value.isNumber()) {
      throw refused(value.asString());
    }
    return value.doubleValue();
  }

  private int percent(JsonNode value) {
    if (!value.isInt() || value.intValue() < 0) {
      throw new IllegalArgumentException(need + ": no whole percentage: " + value);
    }
    return value.intValue();
  }

  private static boolean possible(Domain.Numbers domain, double value) {
    boolean inSteps =
        domain.step() == 0 || Math.rint(value / domain.step()) == value / domain.step();
    return value >= domain.min() && value <= domain.max() && inSteps;
  }

  private MissingFact missing() {
    return new MissingFact(need, definition.title() + "?");
  }

  private IllegalArgumentException refused(String value) {
    return new IllegalArgumentException(need + " can never be " + value);
  }
}
