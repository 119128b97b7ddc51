package org.bonewright.principles;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What a card can say: every verdict, with its severity and the limit that decides, that some world
 * gets, for each of the words by which its limits differ. A local limit must leave all of it: one
 * at which a principle can no longer be unmet would switch it off unseen.
 */
public final class Spoken {

  private final RuleSet rules;

  /** Make it for a rule set. */
  public Spoken(RuleSet rules) {
    this.rules = rules;
  }

  /** Return how many worlds a card has. */
  public int worlds(Card card) {
    return rules.worlds(card).count();
  }

  /** Return the most worlds that a card may have. */
  public static int most() {
    return Worlds.MOST;
  }

  /** Return what the published card can say and the local one cannot, in words, sorted. */
  public List<String> silenced(Card published, Card local) {
    Map<String, Set<String>> after = said(local);
    Set<String> lost = new TreeSet<>();
    said(published)
        .forEach(
            (words, verdicts) ->
                verdicts.stream()
                    .filter(said -> !after.getOrDefault(words, Set.of()).contains(said))
                    .map(said -> words.isEmpty() ? said : said + " where " + words)
                    .forEach(lost::add));
    return List.copyOf(lost);
  }

  private Map<String, Set<String>> said(Card card) {
    List<String> by =
        card.limits().values().stream()
            .flatMap(limit -> limit.by().stream())
            .distinct()
            .sorted()
            .toList();
    List<World> worlds = rules.worlds(card).all();
    Verdicts verdicts = rules.rules().judge(worlds);
    Map<String, Set<String>> said = new TreeMap<>();
    for (World world : worlds) {
      String words = by.stream().map(world::choice).collect(Collectors.joining(" "));
      said.computeIfAbsent(words, w -> new TreeSet<>()).add(inWords(verdicts.of(world)));
    }
    return said;
  }

  private static String inWords(WorldVerdict verdict) {
    return verdict.kind() == VerdictKind.UNMET
        ? "unmet, " + verdict.severity().word() + ", by " + verdict.limit()
        : verdict.kind().word();
  }
}
