package org.bonewright.principles;

import java.util.List;
import java.util.Optional;

/**
 * One rule of a rule file, read as data: what must be true, and what it then says.
 *
 * @param name its name
 * @param principle id of the principle that it judges
 * @param conditions each of which must hold; one holds where any of its tests does
 * @param fault what it finds unmet; empty where it says that the principle applies
 */
record PlainRule(
    String name, String principle, List<List<PlainTest>> conditions, Optional<Fault> fault) {

  PlainRule {
    conditions = conditions.stream().map(List::copyOf).toList();
  }

  /**
   * What a rule finds.
   *
   * @param severity the grade
   * @param limit the limit, or the condition, that decides
   */
  record Fault(Severity severity, String limit) {}

  /** Return whether it fires in a world. */
  boolean fires(World world) {
    return conditions.stream().allMatch(any -> holds(any, world));
  }

  /** Return whether any of some tests is true in a world. */
  static boolean holds(List<PlainTest> any, World world) {
    return any.stream().anyMatch(test -> test.holds(world));
  }
}
