package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.measures.Reading;

/** Finds what would turn a verdict: the neighbouring cells of each number that is read. */
final class Turns {

  private Turns() {}

  /**
   * Return the worlds along each number line through the one world that the readings leave; nothing
   * where they leave several, since then the question is what is not known. Nobody can turn by hand
   * what a model samples; the other numbers can be turned where all samples lie in one cell.
   */
  static Map<String, List<World>> neighbours(
      Worlds former, List<World> worlds, Map<String, Reading> readings) {
    Map<String, List<World>> neighbours = new LinkedHashMap<>();
    if (worlds.size() == 1) {
      for (String need : former.needs()) {
        if (readings.get(need) instanceof Reading.Amount) {
          neighbours.put(need, former.neighbours(worlds.get(0), need));
        }
      }
    }
    return neighbours;
  }

  /** Return the nearest turns, one down and one up for each number at most. */
  static List<Turn> of(
      VerdictKind verdict,
      List<World> worlds,
      Map<String, List<World>> neighbours,
      Verdicts verdicts) {
    List<Turn> turns = new ArrayList<>();
    neighbours.forEach(
        (need, line) -> {
          int here =
              line.stream().map(w -> w.cell(need)).toList().indexOf(worlds.get(0).cell(need));
          nearest(verdict, need, line, verdicts, here, -1).ifPresent(turns::add);
          nearest(verdict, need, line, verdicts, here, 1).ifPresent(turns::add);
        });
    return List.copyOf(turns);
  }

  private static Optional<Turn> nearest(
      VerdictKind verdict,
      String need,
      List<World> line,
      Verdicts verdicts,
      int from,
      int direction) {
    for (int i = from + direction; i >= 0 && i < line.size(); i += direction) {
      VerdictKind there = verdicts.of(line.get(i)).kind();
      if (there != verdict) {
        return Optional.of(new Turn(need, line.get(i).cell(need).shown(), there));
      }
    }
    return Optional.empty();
  }
}
