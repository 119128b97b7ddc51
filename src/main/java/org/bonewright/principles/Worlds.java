package org.bonewright.principles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Definition.Domain;
import org.bonewright.measures.Reading;

/**
 * Forms the worlds of a card: every combination of the cells that its needs may fall in. Words come
 * first, since limits may differ by them; each number is then cut at the limits that hold for these
 * words.
 */
final class Worlds {

  /** The most worlds that a card may have; checked when the rules are built. */
  static final int MOST = 4096;

  private final Card card;
  private final List<String> words = new ArrayList<>();
  private final List<String> numbers = new ArrayList<>();
  private final Map<String, Domain> domains = new HashMap<>();
  private final World.Places places;

  /**
   * Prepare the worlds of a card.
   *
   * @param card the card
   * @param definitions gives the definition of each measure that it needs
   */
  Worlds(Card card, Function<String, Definition> definitions) {
    this.card = card;
    for (Map.Entry<String, String> need : new TreeMap<>(card.needs()).entrySet()) {
      Domain domain = definitions.apply(need.getValue()).domain();
      domains.put(need.getKey(), domain);
      (domain instanceof Domain.Words ? words : numbers).add(need.getKey());
    }
    this.places = new World.Places(needs());
  }

  /** Return the card. */
  Card card() {
    return card;
  }

  /** Return the needs, words first, in the order by which worlds are formed. */
  List<String> needs() {
    List<String> all = new ArrayList<>(words);
    all.addAll(numbers);
    return all;
  }

  /** Return every world of the card: what there is when nothing is known. */
  List<World> all() {
    return form(
        need -> wordCells(((Domain.Words) domain(need)).words()), (need, line) -> line.all());
  }

  /**
   * Return the worlds that these readings leave, by need. What a model samples leaves the cells in
   * which a sample lies.
   */
  List<World> of(Map<String, Reading> readings) {
    checkSamples(readings);
    return form(
        need -> wordCells(need, reading(readings, need)),
        (need, line) -> numberCells(need, line, reading(readings, need)));
  }

  /**
   * Return the worlds that these readings would leave if nothing were known of what a model
   * samples; none where none does.
   */
  List<World> whateverTheModel(Map<String, Reading> readings) {
    Map<String, Reading> unknown = new HashMap<>(readings);
    sampled(readings).keySet().forEach(need -> unknown.put(need, Reading.unknown()));
    return unknown.equals(readings) ? List.of() : of(unknown);
  }

  /** Return the readings of the needs that a model samples, in the order of needs. */
  Map<String, Reading.Sampled> sampled(Map<String, Reading> readings) {
    Map<String, Reading.Sampled> sampled = new LinkedHashMap<>();
    for (String need : needs()) {
      if (readings.get(need) instanceof Reading.Sampled reading) {
        sampled.put(need, reading);
      }
    }
    return sampled;
  }

  /** Return the cell in which a number of a need lies, by the limits that hold in a world. */
  Cell cell(String need, double number, World world) {
    return cell(need, numberLine(need, world.limits()), number);
  }

  private Cell cell(String need, NumberLine line, double number) {
    return line.at(number).orElseThrow(() -> impossible(need, "" + number));
  }

  /** The same place in two lists of samples means the same set of assumptions. */
  private void checkSamples(Map<String, Reading> readings) {
    Map<String, Reading.Sampled> sampled = sampled(readings);
    if (sampled.values().stream().map(reading -> reading.samples().size()).distinct().count() > 1) {
      throw new IllegalStateException(
          card.id() + ": not equally many samples of " + sampled.keySet());
    }
    words.stream()
        .filter(sampled::containsKey)
        .findFirst()
        .ifPresent(
            need -> {
              throw new IllegalStateException(card.id() + ": " + need + " is no number to sample");
            });
  }

  /** Return the worlds that differ from this one in a single need. */
  List<World> neighbours(World world, String need) {
    return form(
        other ->
            other.equals(need)
                ? wordCells(((Domain.Words) domain(other)).words())
                : List.of(world.cell(other)),
        (other, line) ->
            other.equals(need)
                ? line.all()
                : world.cell(other) instanceof Cell.Nothing nothing
                    ? List.of(nothing)
                    : line.touched(world.cell(other).number(), world.cell(other).number()));
  }

  /** Return how many words or cells the card's needs can have together. */
  int count() {
    return all().size();
  }

  private List<World> form(
      Function<String, List<Cell>> wordCells, BiFunction<String, NumberLine, List<Cell>> line) {
    List<Cell[]> combinations = List.<Cell[]>of(new Cell[places.size()]);
    for (String need : words) {
      combinations = extended(combinations, need, wordCells.apply(need));
    }
    List<World> worlds = new ArrayList<>();
    for (Cell[] chosen : combinations) {
      Map<String, Double> limits = limits(chosen);
      List<Cell[]> full = List.<Cell[]>of(chosen);
      for (String need : numbers) {
        full = extended(full, need, line.apply(need, numberLine(need, limits)));
      }
      full.forEach(cells -> worlds.add(new World(card.id(), places, cells, limits)));
    }
    return worlds;
  }

  private List<Cell[]> extended(List<Cell[]> combinations, String need, List<Cell> cells) {
    int place = places.of(need);
    List<Cell[]> extended = new ArrayList<>(combinations.size() * cells.size());
    for (Cell[] combination : combinations) {
      for (Cell cell : cells) {
        Cell[] longer = combination.clone();
        longer[place] = cell;
        extended.add(longer);
      }
    }
    return extended;
  }

  private Map<String, Double> limits(Cell[] chosen) {
    Map<String, String> byWord = new HashMap<>();
    words.forEach(need -> byWord.put(need, chosen[places.of(need)].word()));
    Map<String, Double> limits = new HashMap<>();
    card.limits().forEach((name, limit) -> limits.put(name, limit.resolve(byWord)));
    return Map.copyOf(limits);
  }

  private NumberLine numberLine(String need, Map<String, Double> limits) {
    List<Double> cuts = new ArrayList<>();
    card.limits()
        .forEach(
            (name, limit) -> {
              if (limit.of().equals(need)) {
                cuts.add(limits.getOrDefault(name, Double.NaN));
              }
            });
    return new NumberLine((Domain.Numbers) domain(need), cuts);
  }

  private static List<Cell> wordCells(List<String> words) {
    return words.stream().map(word -> (Cell) new Cell.Text(word)).toList();
  }

  private List<Cell> wordCells(String need, Reading reading) {
    if (reading instanceof Reading.Word word) {
      return wordCells(List.copyOf(word.possible()));
    }
    if (reading instanceof Reading.None) {
      return List.of(new Cell.Nothing());
    }
    return wordCells(((Domain.Words) domain(need)).words());
  }

  private List<Cell> numberCells(String need, NumberLine line, Reading reading) {
    if (reading instanceof Reading.Amount number) {
      List<Cell> touched = line.near(number.min(), number.max());
      if (touched.isEmpty()) {
        throw impossible(need, reading.shown());
      }
      return touched;
    }
    if (reading instanceof Reading.Sampled sampled) {
      Set<Cell> touched = new HashSet<>();
      sampled.samples().forEach(sample -> touched.add(cell(need, line, sample)));
      return line.all().stream().filter(touched::contains).toList();
    }
    return reading instanceof Reading.None ? List.of(new Cell.Nothing()) : line.all();
  }

  private IllegalStateException impossible(String need, String shown) {
    return new IllegalStateException(
        card.id() + ": " + need + " cannot be " + shown + ", which is no such number");
  }

  private Domain domain(String need) {
    Domain domain = domains.get(need);
    if (domain == null) {
      throw new IllegalArgumentException(card.id() + " has no need " + need);
    }
    return domain;
  }

  private static Reading reading(Map<String, Reading> readings, String need) {
    Reading reading = readings.get(need);
    if (reading == null) {
      throw new IllegalArgumentException("no reading for " + need);
    }
    return reading;
  }
}
