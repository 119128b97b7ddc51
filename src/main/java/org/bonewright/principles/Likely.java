package org.bonewright.principles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bonewright.measures.Reading;

/**
 * What the samples of a mechanical model leave of the worlds of a card. Worlds that agree in every
 * other need make a group; inside a group nine samples in ten decide. Across groups all must agree
 * as ever, since nobody knows which of them it is. Where nothing is sampled all worlds stay.
 */
final class Likely {

  private final List<World> formed;
  private final Verdicts verdicts;
  private final Map<String, Reading.Sampled> sampled;
  private final List<SampledGroup> groups = new ArrayList<>();
  private final List<World> worlds;

  /**
   * Share the samples among the worlds.
   *
   * @param former what formed the worlds
   * @param formed the worlds that the readings leave
   * @param verdicts what the rules say
   * @param readings the readings by need
   */
  Likely(Worlds former, List<World> formed, Verdicts verdicts, Map<String, Reading> readings) {
    this.formed = formed;
    this.verdicts = verdicts;
    this.sampled = former.sampled(readings);
    if (sampled.isEmpty()) {
      this.worlds = formed;
      return;
    }
    List<String> others =
        former.needs().stream().filter(need -> !sampled.containsKey(need)).toList();
    formed.stream()
        .collect(
            Collectors.groupingBy(
                world -> world.cells(others), LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(alike -> groups.add(new SampledGroup(counts(former, alike), verdicts)));
    this.worlds = groups.stream().flatMap(group -> group.kept().stream()).toList();
  }

  private Map<World, Integer> counts(Worlds former, List<World> alike) {
    List<String> needs = List.copyOf(sampled.keySet());
    Map<List<Cell>, World> byCells = new HashMap<>();
    alike.forEach(world -> byCells.put(world.cells(needs), world));
    Map<World, Integer> counts = new LinkedHashMap<>();
    int samples = sampled.values().iterator().next().samples().size();
    for (int i = 0; i < samples; i++) {
      int place = i;
      List<Cell> cells =
          needs.stream().map(need -> former.cell(need, sample(need, place), alike.get(0))).toList();
      counts.merge(
          Optional.ofNullable(byCells.get(cells))
              .orElseThrow(() -> new IllegalStateException("no world holds " + cells)),
          1,
          Integer::sum);
    }
    return counts;
  }

  private double sample(String need, int place) {
    return Optional.ofNullable(sampled.get(need)).orElseThrow().samples().get(place);
  }

  /** Return the worlds that stay. */
  List<World> worlds() {
    return worlds;
  }

  /** Return the readings that a model samples, by need. */
  Map<String, Reading.Sampled> sampled() {
    return sampled;
  }

  /** Return the groups; none where nothing is sampled. */
  List<SampledGroup> groups() {
    return List.copyOf(groups);
  }

  /** Return whether there is a group in which fewer than nine samples in ten agree. */
  boolean isSplit() {
    return groups.stream().anyMatch(group -> group.agreed().isEmpty());
  }

  /** Return how many samples fall into a world; of worlds that differ in no sampled need, none. */
  int count(World world) {
    return groups.stream().mapToInt(group -> group.count(world)).sum();
  }

  /** Return the limits that are not kept, with their grades: for each group, else each world. */
  List<Map<String, Severity>> faults() {
    return groups.isEmpty()
        ? formed.stream().map(verdicts::faults).toList()
        : groups.stream().map(SampledGroup::faults).toList();
  }
}
