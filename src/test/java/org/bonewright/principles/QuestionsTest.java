package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an unknown verdict asks for matters, and what it says would settle it does. */
class QuestionsTest {

  private static final int INPUTS = 150;
  private static final int PAIRS = 40;

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_fact_that_alone_turns_the_verdict_is_asked_for(Card card) {
    Trials trials = new Trials(card);
    List<String> notAsked = new ArrayList<>();
    trials.run(
        trial -> {
          String need = trials.draws.one(List.copyOf(trial.readings().keySet()));
          List<MissingFact> missing = trial.readings().get(need).missing();
          if (!missing.isEmpty() && !trial.unknown().asks().containsAll(missing)) {
            Map<String, Cell> one = trials.values(trial.inside());
            Map<String, Cell> other = new TreeMap<>(one);
            other.put(need, trial.inside().get(need).get());
            trials.pair(one, other, () -> notAsked.add(need + " of " + trial));
          }
        });
    assertThat(notAsked.stream().limit(3)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void a_fact_that_settles_the_verdict_leaves_nothing_open(Card card) {
    Trials trials = new Trials(card);
    List<String> leftOpen = new ArrayList<>();
    trials.run(
        trial -> {
          for (MissingFact fact : trial.unknown().settles()) {
            Map<String, Cell> one = trials.values(trial.inside());
            Map<String, Cell> other = trials.values(trial.inside());
            trial
                .readings()
                .forEach(
                    (need, reading) -> {
                      if (reading.missing().equals(List.of(fact))) {
                        other.put(need, one.get(need));
                      }
                    });
            trials.pair(one, other, () -> leftOpen.add(fact + " of " + trial));
          }
        });
    assertThat(leftOpen.stream().limit(3)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource(AllCells.NAMED)
  void an_unknown_verdict_asks_for_something_that_is_missing(Card card) {
    Trials trials = new Trials(card);
    trials.run(
        trial -> {
          List<MissingFact> missing =
              trial.readings().values().stream().flatMap(r -> r.missing().stream()).toList();
          assertThat(trial.unknown().asks()).isNotEmpty().isSubsetOf(missing);
          assertThat(trial.unknown().asks()).containsAll(trial.unknown().settles());
        });
  }

  private record Trial(
      Map<String, Reading> readings, Map<String, Supplier<Cell>> inside, Verdict.Unknown unknown) {

    @Override
    public String toString() {
      return unknown + " for " + Draws.shown(readings);
    }
  }

  /** Unknown verdicts on random readings, and pairs of completions of which both must agree. */
  private static final class Trials {

    private final Card card;
    private final Draws draws;
    private final List<World> pending = new ArrayList<>();
    private final List<Runnable> whenTheyDiffer = new ArrayList<>();

    Trials(Card card) {
      this.card = card;
      this.draws = new Draws(AllCells.RULES, card, card.id().hashCode());
    }

    void run(java.util.function.Consumer<Trial> check) {
      Worlds former = AllCells.RULES.worlds(card);
      List<Map<String, Reading>> inputs = Stream.generate(draws::readings).limit(INPUTS).toList();
      List<List<World>> formed = inputs.stream().map(former::of).toList();
      Verdicts said = AllCells.RULES.rules().judge(formed.stream().flatMap(List::stream).toList());
      for (int i = 0; i < INPUTS; i++) {
        Map<String, Reading> readings = inputs.get(i);
        if (new CardVerdict(former, formed.get(i), said, readings).verdict()
            instanceof Verdict.Unknown unknown) {
          Trial trial = new Trial(readings, draws.inside(readings), unknown);
          for (int pair = 0; pair < PAIRS; pair++) {
            check.accept(trial);
          }
        }
      }
      Verdicts pairs = AllCells.RULES.rules().judge(pending);
      for (int i = 0; i < whenTheyDiffer.size(); i++) {
        if (pairs.of(pending.get(2 * i)).kind() != pairs.of(pending.get(2 * i + 1)).kind()) {
          whenTheyDiffer.get(i).run();
        }
      }
    }

    Map<String, Cell> values(Map<String, Supplier<Cell>> inside) {
      Map<String, Cell> values = new TreeMap<>();
      inside.forEach((need, cells) -> values.put(need, cells.get()));
      return values;
    }

    void pair(Map<String, Cell> one, Map<String, Cell> other, Runnable whenTheyDiffer) {
      pending.add(PlainWorld.of(card, one));
      pending.add(PlainWorld.of(card, other));
      this.whenTheyDiffer.add(whenTheyDiffer);
    }
  }
}
