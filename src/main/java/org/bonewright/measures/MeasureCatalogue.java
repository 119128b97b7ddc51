package org.bonewright.measures;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Measures by id. */
public final class MeasureCatalogue {

  private final Map<String, Measure> measures;

  private MeasureCatalogue(List<Measure> all) {
    this.measures =
        all.stream()
            .collect(
                Collectors.toMap(
                    measure -> measure.definition().id(),
                    Function.identity(),
                    (one, two) -> {
                      throw new IllegalStateException("two measures " + one.definition().id());
                    },
                    TreeMap::new));
  }

  /**
   * Return a catalogue of these measures.
   *
   * @throws IllegalStateException if two have the same id
   */
  public static MeasureCatalogue of(List<Measure> measures) {
    return new MeasureCatalogue(measures);
  }

  /** Return the same catalogue with one measure taken in another way. */
  public MeasureCatalogue with(Measure other) {
    String id = other.definition().id();
    return new MeasureCatalogue(
        measures.values().stream().map(m -> m.definition().id().equals(id) ? other : m).toList());
  }

  /** Return every definition, in order of id. */
  public List<Definition> definitions() {
    return measures.values().stream().map(Measure::definition).toList();
  }

  /** Return the definition of a measure, if there is one of that id. */
  public Optional<Definition> definition(String id) {
    return Optional.ofNullable(measures.get(id)).map(Measure::definition);
  }

  /**
   * Return a measure.
   *
   * @throws IllegalArgumentException if there is none of that id
   */
  Measure measure(String id) {
    Measure measure = measures.get(id);
    if (measure == null) {
      throw new IllegalArgumentException("no measure " + id);
    }
    return measure;
  }
}
