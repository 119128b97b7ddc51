package org.bonewright.principles;

import java.util.List;
import java.util.TreeSet;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain;
import org.bonewright.measures.Kind;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import tools.jackson.databind.JsonNode;

/**
 * Turns what an example gives for a need into a reading. What the measure can never read is
 * refused.
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
    return of(written(value));
  }

  private GivenValue written(JsonNode value) {
    try {
      return GivenValue.of(value);
    } catch (IllegalArgumentException fault) {
      throw new IllegalArgumentException(need + ": " + fault.getMessage(), fault);
    }
  }

  private Reading of(GivenValue value) {
    if (value instanceof GivenValue.Amount amount) {
      return amount(amount.from(), amount.to());
    }
    if (value instanceof GivenValue.Words words) {
      return words(words.words());
    }
    if (value instanceof GivenValue.Sampled sampled) {
      return sampled(sampled.samples());
    }
    return value instanceof GivenValue.NotThere ? new Reading.None("none given") : unknown();
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

  private Reading sampled(List<Double> samples) {
    samples.forEach(sample -> amount(sample, sample));
    return new Reading.Sampled(
        samples.get(0), samples, "given", "what is sampled", List.of(missing()));
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
