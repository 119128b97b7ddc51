package org.bonewright.principles;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.bonewright.measures.Definition;
import org.bonewright.principles.RuleChanges.Changed;
import org.bonewright.principles.RuleChanges.Moved;
import org.bonewright.principles.RuleChanges.Version;

/** Compares versions of the rules, principle by principle. */
final class ReleaseChanges {

  private final Map<String, Definition> measures = new HashMap<>();
  private final ReadTogether together = new ReadTogether();

  ReleaseChanges(RuleSet rules) {
    rules.definitions().forEach(measure -> measures.put(measure.id(), measure));
  }

  /** Return what each version changed, the present one, if it is another, before those released. */
  RuleChanges of(Released present, List<Released> released) {
    List<Released> all = new ArrayList<>(released);
    all.add(0, present);
    List<Version> versions = new ArrayList<>();
    for (int i = 0; i + 1 < all.size(); i++) {
      Version version = between(all.get(i + 1), all.get(i));
      if (!version.version().equals(version.before()) || !version.isEmpty()) {
        versions.add(version);
      }
    }
    return new RuleChanges(versions);
  }

  private Version between(Released before, Released after) {
    List<Changed> changed = new ArrayList<>();
    after
        .principles()
        .forEach(
            (id, principle) -> {
              ReleasedPrinciple then = before.principles().get(id);
              if (then != null && !then.equals(principle)) {
                changed(id, then, principle).ifPresent(changed::add);
              }
            });
    return new Version(
        after.version(),
        before.version(),
        after.principles().keySet().stream()
            .filter(id -> !before.principles().containsKey(id))
            .toList(),
        before.principles().entrySet().stream()
            .filter(entry -> !after.principles().containsKey(entry.getKey()))
            .map(entry -> entry.getValue().title())
            .toList(),
        changed);
  }

  /** Return what a principle changed; nothing where it is written otherwise and judges the same. */
  private Optional<Changed> changed(String id, ReleasedPrinciple before, ReleasedPrinciple after) {
    Function<String, Optional<Definition>> find =
        measure -> Optional.ofNullable(measures.get(measure));
    CellChanges.Told told = new CellChanges(id, before, after, find, together).told();
    if (told.rows().isEmpty()) {
      return Optional.empty();
    }
    List<String> reads = new ArrayList<>();
    after.needs().values().stream()
        .filter(measure -> !before.needs().containsValue(measure))
        .forEach(measure -> reads.add("now reads \"" + CellWords.title(find, measure) + "\""));
    before.needs().values().stream()
        .filter(measure -> !after.needs().containsValue(measure))
        .forEach(
            measure -> reads.add("no longer reads \"" + CellWords.title(find, measure) + "\""));
    return Optional.of(
        new Changed(
            id, after.title(), reads, moved(before, after, find), told.given(), told.rows()));
  }

  private static List<Moved> moved(
      ReleasedPrinciple before,
      ReleasedPrinciple after,
      Function<String, Optional<Definition>> find) {
    List<Moved> moved = new ArrayList<>();
    after
        .limits()
        .forEach(
            (name, limit) -> {
              Card.Limit then = before.limits().get(name);
              if (then != null) {
                String measure = after.needs().getOrDefault(limit.of(), limit.of());
                CellWords words = new CellWords(find, measure);
                new TreeMap<>(limit.values())
                    .forEach(
                        (row, value) -> {
                          Double was = then.values().get(row);
                          if (was != null && !was.equals(value)) {
                            String whom = row.equals(Card.Limit.OTHERWISE) ? "" : ", " + row;
                            moved.add(
                                new Moved(
                                    CellWords.title(find, measure) + whom,
                                    words.number(was),
                                    words.number(value)));
                          }
                        });
              }
            });
    return moved;
  }
}
