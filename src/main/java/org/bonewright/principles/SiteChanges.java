package org.bonewright.principles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Reading;
import org.bonewright.measures.load.LoadMeasures;
import org.bonewright.measures.load.UsualLoads;

/**
 * What a site has set instead of published limits and severities. Whoever makes it has checked it
 * against the cards.
 *
 * @param name the site's short name
 * @param hash content hash of the site's file
 * @param invented whether the site is made up, for demonstration or teaching
 * @param limits the limits, in the order of the file
 * @param severities the severities, in the order of the file
 * @param loads the loads of a bone, in the order of the file; each bone once
 */
public record SiteChanges(
    String name,
    String hash,
    boolean invented,
    List<LocalLimit> limits,
    List<LocalSeverity> severities,
    List<LocalLoads> loads) {

  /** Keep the lists as they are now. */
  public SiteChanges {
    limits = List.copyOf(limits);
    severities = List.copyOf(severities);
    loads = List.copyOf(loads);
  }

  /** Return a table of loads with the site's. */
  public UsualLoads on(UsualLoads table) {
    UsualLoads local = table;
    for (LocalLoads change : loads) {
      local = local.with(change.bone(), change.loads());
    }
    return local;
  }

  /**
   * Return the loads that hold for a verdict: those of the bone, where the case states none of its
   * own and the principle reads something that rests on loads.
   *
   * @param rules gives what a need rests on
   */
  public Optional<LocalLoads> loads(CaseFile caseFile, Card card, RuleSet rules) {
    boolean rests =
        card.needs().values().stream().map(rules::definition).anyMatch(LoadMeasures::restsOnLoads);
    return loads.stream()
        .filter(change -> change.bone() == caseFile.bone().name())
        .filter(change -> caseFile.loads().isEmpty() && rests)
        .findFirst();
  }

  /** Return a card with the site's limits. */
  public Card on(Card card) {
    Card local = card;
    for (LocalLimit limit : limits(card)) {
      local = limit.on(local);
    }
    return local;
  }

  /** Return the local limits of a principle. */
  public List<LocalLimit> limits(Card card) {
    return limits.stream().filter(limit -> limit.principle().equals(card.id())).toList();
  }

  /** Return the local severities of a principle. */
  public List<LocalSeverity> severities(Card card) {
    return severities.stream().filter(s -> s.principle().equals(card.id())).toList();
  }

  /** Return what a severity that the rules give counts as here. */
  public Severity severity(Card card, Severity given) {
    return severities(card).stream()
        .filter(change -> change.from() == given)
        .map(LocalSeverity::to)
        .findFirst()
        .orElse(given);
  }

  /**
   * Return the local limits that hold for a verdict: those whose words are among what was read, or
   * may still be.
   *
   * @param rules gives the words that a need can have
   */
  public List<LocalLimit> holding(Judgement judgement, RuleSet rules) {
    return limits(judgement.card()).stream()
        .filter(limit -> keys(judgement, limit, rules).contains(limit.key()))
        .toList();
  }

  private static SortedSet<String> keys(Judgement judgement, LocalLimit local, RuleSet rules) {
    Card card = judgement.card();
    Card.Limit limit = card.limits().get(local.limit());
    if (limit == null) {
      return new TreeSet<>();
    }
    List<String> joined = List.of("");
    for (String need : limit.by()) {
      List<String> longer = new ArrayList<>();
      for (String before : joined) {
        for (String word : words(need, judgement, rules)) {
          longer.add(before.isEmpty() ? word : before + " " + word);
        }
      }
      joined = longer;
    }
    SortedSet<String> keys = new TreeSet<>();
    joined.forEach(key -> keys.add(limit.values().containsKey(key) ? key : Card.Limit.OTHERWISE));
    return keys;
  }

  private static List<String> words(String need, Judgement judgement, RuleSet rules) {
    Reading reading = judgement.readings().get(need);
    if (reading instanceof Reading.Word word) {
      return List.copyOf(word.possible());
    }
    if (reading instanceof Reading.None) {
      return List.of("none");
    }
    return Optional.ofNullable(judgement.card().needs().get(need))
        .map(measure -> rules.definition(measure).domain())
        .filter(Definition.Domain.Words.class::isInstance)
        .map(Definition.Domain.Words.class::cast)
        .map(Definition.Domain.Words::words)
        .orElse(List.of());
  }
}
