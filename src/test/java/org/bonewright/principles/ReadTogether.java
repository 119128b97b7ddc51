package org.bonewright.principles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain.Words;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MeasureCatalogue;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;

/**
 * Which words can be read of one bone at once. A measure that is made of the words of other
 * measures and of nothing else is taken with each of theirs: that tells all that it can read beside
 * them. Of any other nothing is told, so that all its words count as possible.
 */
final class ReadTogether {

  private static final MeasureCatalogue CATALOGUE = EveryMeasure.catalogue();

  /** Cases so unlike that a measure which looks at more than other measures reads otherwise. */
  private static final List<Subject> UNLIKE =
      Stream.of(
              CaseText.bare().file(),
              CaseText.plated().file(),
              CaseText.nailed().file(),
              BaseCase.of("femur-nail-nonunion-plan").caseFile())
          .flatMap(file -> Subject.of(file).stream())
          .toList();

  private static final String NONE = "none";

  /** More ways than any such measure has; beyond that nothing is told of it. */
  private static final int MOST = 1000;

  private final Map<String, Optional<Set<Map<String, String>>>> tables = new HashMap<>();

  /** Return whether one bone may read these words, each named by its measure. */
  boolean possible(Map<String, String> words) {
    return words.keySet().stream()
        .allMatch(
            measure ->
                table(measure)
                    .map(rows -> rows.stream().anyMatch(row -> agree(row, words)))
                    .orElse(true));
  }

  private static boolean agree(Map<String, String> row, Map<String, String> words) {
    return row.entrySet().stream()
        .allMatch(
            read -> words.getOrDefault(read.getKey(), read.getValue()).equals(read.getValue()));
  }

  /**
   * Return every way in which a measure and what it is made of can be read together; empty where it
   * is made of more than words of measures.
   */
  Optional<Set<Map<String, String>>> table(String measure) {
    return tables.computeIfAbsent(measure, ReadTogether::made);
  }

  private static Optional<Set<Map<String, String>>> made(String measure) {
    Optional<Definition> definition = CATALOGUE.definition(measure);
    List<String> inputs = definition.map(Definition::inputs).orElse(List.of());
    boolean ofWords =
        definition.map(Definition::domain).filter(Words.class::isInstance).isPresent()
            && !inputs.isEmpty()
            && inputs.stream().allMatch(input -> words(input).isPresent());
    if (!ofWords) {
      return Optional.empty();
    }
    List<Map<String, String>> ways = all(inputs);
    if (ways.size() > MOST) {
      return Optional.empty();
    }
    Set<Map<String, String>> rows = new HashSet<>();
    for (Map<String, String> given : ways) {
      Set<Set<String>> read = new HashSet<>();
      for (Subject subject : UNLIKE) {
        read.add(read(measure, given, subject));
      }
      if (read.size() != 1) {
        return Optional.empty();
      }
      for (String word : read.iterator().next()) {
        Map<String, String> row = new TreeMap<>(given);
        row.put(measure, word);
        rows.add(row);
      }
    }
    return Optional.of(rows);
  }

  private static Optional<List<String>> words(String measure) {
    return CATALOGUE
        .definition(measure)
        .map(Definition::domain)
        .filter(Words.class::isInstance)
        .map(domain -> ((Words) domain).words());
  }

  /** Return every way in which the inputs may fall. */
  private static List<Map<String, String>> all(List<String> inputs) {
    List<Map<String, String>> all = List.of(Map.of());
    for (String input : inputs) {
      List<String> words = new ArrayList<>(words(input).orElseThrow());
      if (!words.contains(NONE)) {
        words.add(NONE);
      }
      List<Map<String, String>> longer = new ArrayList<>();
      for (Map<String, String> before : all) {
        for (String word : words) {
          Map<String, String> with = new TreeMap<>(before);
          with.put(input, word);
          longer.add(with);
        }
      }
      all = longer;
    }
    return all;
  }

  /** Nothing is read where an input can never be none, and none is tried all the same. */
  private static Set<String> read(String measure, Map<String, String> given, Subject subject) {
    MeasureCatalogue catalogue = CATALOGUE;
    for (Map.Entry<String, String> input : given.entrySet()) {
      catalogue = catalogue.with(new Fixed(definition(input.getKey()), input.getValue()));
    }
    Reading reading;
    try {
      reading = new Scene(subject, catalogue).read(measure);
    } catch (IllegalArgumentException noWordLeft) {
      return Set.of();
    }
    if (reading instanceof Reading.Word word) {
      return word.possible();
    }
    return Set.of(reading instanceof Reading.None ? NONE : "unknown");
  }

  private static Definition definition(String measure) {
    return CATALOGUE.definition(measure).orElseThrow();
  }

  /** A measure that reads one word, whatever the case is. */
  private record Fixed(Definition definition, String word) implements Measure {

    @Override
    public Reading take(Scene scene) {
      return ((Words) definition.domain()).words().contains(word)
          ? Reading.word(word, "given")
          : new Reading.None("given");
    }
  }
}
