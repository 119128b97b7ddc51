package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Where rules put what they find; the global {@code verdicts} of every rule file. */
public final class Verdicts {

  private final Map<World, Boolean> applying = new HashMap<>();
  private final Map<World, List<Fault>> faults = new HashMap<>();

  /** Say that the principle applies in this world. */
  public void applies(World world) {
    applying.put(world, true);
  }

  /**
   * Say that the principle is not kept in this world.
   *
   * @param world the world
   * @param grade the severity, as a word
   * @param limit the limit, or the condition, that decided; a key of the card's words
   */
  public void unmet(World world, String grade, String limit) {
    faults.computeIfAbsent(world, w -> new ArrayList<>()).add(new Fault(Severity.of(grade), limit));
  }

  /**
   * Return what the rules say of a world: not applicable where none says that it applies, else
   * unmet at the highest grade that any gives, else met.
   */
  WorldVerdict of(World world) {
    if (!applying.containsKey(world)) {
      return WorldVerdict.NOT_APPLICABLE;
    }
    return faults.getOrDefault(world, List.of()).stream()
        .max(Comparator.comparing(Fault::severity).thenComparing(Fault::limit))
        .map(fault -> new WorldVerdict(VerdictKind.UNMET, fault.severity(), fault.limit()))
        .orElse(WorldVerdict.MET);
  }

  /** Return every limit that a world does not keep, with the highest grade given for it. */
  Map<String, Severity> faults(World world) {
    Map<String, Severity> byLimit = new TreeMap<>();
    faults
        .getOrDefault(world, List.of())
        .forEach(
            fault ->
                byLimit.merge(
                    fault.limit(), fault.severity(), (a, b) -> a.compareTo(b) >= 0 ? a : b));
    return byLimit;
  }

  private record Fault(Severity severity, String limit) {}
}
