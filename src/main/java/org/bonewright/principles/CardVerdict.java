package org.bonewright.principles;

import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;

/**
 * Joins what the rules say of the worlds of one card and subject to one verdict: all agree, or it
 * is unknown, with what would settle it.
 */
final class CardVerdict {

  private final Card card;
  private final List<String> needs;
  private final Likely likely;
  private final List<World> worlds;
  private final Verdicts verdicts;
  private final List<WorldVerdict> said;
  private final Hinges<VerdictKind> hinges;
  private final Map<String, Reading> readings;

  /**
   * Prepare the joining.
   *
   * @param former what formed the worlds
   * @param formed the worlds that the readings leave
   * @param verdicts what the rules say
   * @param readings the readings by need
   */
  CardVerdict(Worlds former, List<World> formed, Verdicts verdicts, Map<String, Reading> readings) {
    this.card = former.card();
    this.needs = former.needs();
    this.verdicts = verdicts;
    this.readings = readings;
    this.likely = new Likely(former, formed, verdicts, readings);
    this.worlds = likely.worlds();
    this.said = worlds.stream().map(verdicts::of).toList();
    this.hinges = new Hinges<>(card, worlds, said.stream().map(WorldVerdict::kind).toList());
  }

  /** Return the verdict. */
  Verdict verdict() {
    Set<VerdictKind> possible = new TreeSet<>();
    said.forEach(verdict -> possible.add(verdict.kind()));
    if (possible.size() > 1) {
      List<String> relevant = relevantNeeds();
      return new Verdict.Unknown(possible, worst().severity(), asks(relevant), settles(relevant));
    }
    return switch (possible.iterator().next()) {
      case MET -> new Verdict.Met();
      case NOT_APPLICABLE -> new Verdict.NotApplicable();
      case UNMET -> unmet();
      case UNKNOWN -> throw new IllegalStateException("a world is never unknown");
    };
  }

  private Verdict unmet() {
    Severity severity = worst().severity();
    Map<String, Severity> certain = new CertainFaults(card, likely.faults()).byLimit();
    String limit =
        certain.entrySet().stream()
            .filter(fault -> fault.getValue() == severity)
            .map(Map.Entry::getKey)
            .findFirst()
            .orElse(worst().limit());
    return new Verdict.Unmet(severity, mildest(), limit, List.copyOf(certain.keySet()));
  }

  /**
   * Return how many samples of a model give the verdict, if a model has a part in it.
   *
   * @param whateverTheModel the worlds that there would be if nothing were known of the model
   */
  Optional<SampleShare> share(Verdict verdict, List<World> whateverTheModel) {
    Hinges<WorldVerdict> anywhere =
        new Hinges<>(card, whateverTheModel, whateverTheModel.stream().map(verdicts::of).toList());
    return SampleShare.of(
        verdict,
        likely,
        likely.sampled().keySet().stream()
            .filter(need -> !anywhere.areOnly(without(need, needs)))
            .toList());
  }

  /** The gravest verdict; of several limits the one that most samples do not keep. */
  private WorldVerdict worst() {
    Map<WorldVerdict, Integer> samples = new HashMap<>();
    for (int i = 0; i < said.size(); i++) {
      if (said.get(i).kind() == VerdictKind.UNMET) {
        samples.merge(said.get(i), likely.count(worlds.get(i)), Integer::sum);
      }
    }
    return samples.entrySet().stream()
        .max(
            Comparator.comparing((Map.Entry<WorldVerdict, Integer> e) -> e.getKey().severity())
                .thenComparing(Map.Entry::getValue)
                .thenComparing(e -> e.getKey().limit()))
        .map(Map.Entry::getKey)
        .orElse(WorldVerdict.MET);
  }

  private Severity mildest() {
    return said.stream()
        .map(WorldVerdict::severity)
        .min(Comparator.naturalOrder())
        .orElse(Severity.NOTE);
  }

  /**
   * A need matters if two ways that differ in it alone get different verdicts. What a model samples
   * matters where the samples are split, too: one of two such needs may follow the other closely.
   */
  private List<String> relevantNeeds() {
    Set<String> relevant = new LinkedHashSet<>();
    for (String need : needs) {
      if (!hinges.areOnly(without(need, needs))) {
        relevant.add(need);
      }
    }
    if (likely.isSplit() && Collections.disjoint(relevant, likely.sampled().keySet())) {
      relevant.addAll(likely.sampled().keySet());
    }
    return relevant.isEmpty() ? needs : List.copyOf(relevant);
  }

  private static List<String> without(String need, List<String> needs) {
    return needs.stream().filter(other -> !other.equals(need)).toList();
  }

  private List<MissingFact> asks(List<String> relevant) {
    Set<MissingFact> asks = new LinkedHashSet<>();
    relevant.forEach(need -> asks.addAll(missing(need)));
    return List.copyOf(asks);
  }

  private List<MissingFact> missing(String need) {
    Reading reading = readings.get(need);
    return reading == null ? List.of() : reading.missing();
  }

  /**
   * A fact settles the verdict if, whatever it turns out to be, all worlds left agree. Only needs
   * that miss nothing but this fact become known by it. What a model samples never does: a fact
   * moves its samples, and nobody knows where to.
   */
  private List<MissingFact> settles(List<String> relevant) {
    return asks(relevant).stream().filter(this::settles).toList();
  }

  private boolean settles(MissingFact fact) {
    Set<String> sampled = likely.sampled().keySet();
    List<String> known =
        needs.stream()
            .filter(need -> !sampled.contains(need))
            .filter(need -> missing(need).equals(List.of(fact)))
            .toList();
    return !known.isEmpty()
        && sampled.stream().noneMatch(need -> missing(need).contains(fact))
        && hinges.areOnly(known);
  }
}
