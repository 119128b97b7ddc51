package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.RandomHistory;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Subject;
import org.bonewright.review.PlanDemands;
import org.bonewright.review.PrincipleTable;
import org.bonewright.review.Review;
import org.bonewright.review.Reviewer;
import org.bonewright.site.SiteText;
import org.junit.jupiter.api.Test;

/** What no site and no profile can change, whatever the history. */
class LocalHistoriesTest {

  private static final int HISTORIES = 100;
  private static final long SEED = 20_261_127;

  /** Changes that are tried for each site; those that are refused are left out. */
  private static final int TRIED = 12;

  private static final int SITES = 8;

  private static final RuleSet PUBLISHED = RuleSet.built();
  private static final Judge JUDGE = new Judge(PUBLISHED);
  private static final Reviewer REVIEWER = new Reviewer(PUBLISHED);
  private static final RandomHistory CASES = RandomHistory.ofAllCases();

  @Test
  void infection_comes_first_and_unknown_is_not_met_in_every_profile_and_overlay() {
    List<RuleSet> sites = IntStream.range(0, SITES).mapToObj(LocalHistoriesTest::site).toList();
    assertThat(sites)
        .allSatisfy(site -> assertThat(site.site().orElseThrow().limits()).isNotEmpty());
    IntStream.range(0, HISTORIES)
        .parallel()
        .forEach(
            i -> {
              CaseText text = CASES.next(new Random(SEED + i));
              try {
                holds(text.file(), sites.get(i % SITES));
              } catch (RuntimeException | AssertionError fault) {
                throw new AssertionError("history " + i + ": " + text.tree(), fault);
              }
            });
  }

  /** A site of changes, each drawn by chance and kept if the file stays sound with it. */
  private static RuleSet site(int number) {
    Random random = new Random(SEED - number);
    List<Card> cards = PUBLISHED.cards().stream().filter(c -> !c.limits().isEmpty()).toList();
    List<Consumer<SiteText>> kept = new ArrayList<>();
    for (int i = 0; i < TRIED; i++) {
      Card card = cards.get(random.nextInt(cards.size()));
      List<String> names = List.copyOf(card.limits().keySet());
      String name = names.get(random.nextInt(names.size()));
      kept.add(change(card, name, random));
      if (!whole(kept).read(PUBLISHED).problems().isEmpty()) {
        kept.remove(kept.size() - 1);
      }
    }
    kept.add(text -> text.severity("two-bolts-each-end", "critical", "major"));
    kept.add(text -> text.severity("residual-gap-closed", "minor", "major"));
    return whole(kept).on(PUBLISHED);
  }

  private static SiteText whole(List<Consumer<SiteText>> changes) {
    SiteText text = new SiteText();
    changes.forEach(change -> change.accept(text));
    return text;
  }

  private static Consumer<SiteText> change(Card card, String name, Random random) {
    Card.Limit limit = card.limits().get(name);
    List<String> keys = List.copyOf(limit.values().keySet());
    String key = keys.get(random.nextInt(keys.size()));
    Definition.Domain.Numbers domain =
        (Definition.Domain.Numbers) PUBLISHED.definition(card.needs().get(limit.of())).domain();
    double wanted = limit.values().get(key) * (0.4 + 1.4 * random.nextDouble());
    double value = domain.step() == 0 ? wanted : Math.rint(wanted / domain.step()) * domain.step();
    return limit.by().isEmpty()
        ? text -> text.limit(card.id(), name, value, domain.unit())
        : text -> text.limit(card.id(), name, key, value, domain.unit());
  }

  private static void holds(CaseFile file, RuleSet site) {
    JudgedCase published = JUDGE.judge(file);
    JudgedCase local = new Judge(site).judge(file);
    for (Subject subject : local.subjects()) {
      assertThat(InfectionFirst.unlabelled(local, subject)).isEmpty();
      for (Judgement judgement : local.of(subject)) {
        allWorldsAgree(site, judgement);
        if (judgement.card().siteMayNotChange().isPresent()) {
          Judgement other = published.of(subject, judgement.card().id()).orElseThrow();
          assertThat(judgement.verdict()).as(judgement.card().id()).isEqualTo(other.verdict());
          assertThat(judgement.severity()).isEqualTo(other.severity());
        }
      }
    }
    Review before = REVIEWER.review(file);
    Reviewer reviewer = new Reviewer(site);
    for (Profile profile : site.profiles()) {
      Review review = reviewer.review(file, profile);
      stillStopped(before, review);
      notFreeWhereStopped(local, review);
      if (!profile.isDefault()) {
        assertThat(REVIEWER.review(file, profile).leavesCriticalOpen())
            .isEqualTo(before.leavesCriticalOpen());
      }
    }
  }

  /**
   * Met, or unmet, is said only where every world that the readings leave says so; of what a model
   * samples, every world that nine samples in ten leave.
   */
  private static void allWorldsAgree(RuleSet site, Judgement judgement) {
    Worlds former = site.worlds(judgement.card());
    List<World> worlds = former.of(judgement.readings());
    if (worlds.size() > 1 && !judgement.is(VerdictKind.UNKNOWN)) {
      Verdicts verdicts = site.rules().judge(worlds);
      assertThat(new Likely(former, worlds, verdicts, judgement.readings()).worlds())
          .as(judgement.card().id())
          .allMatch(world -> verdicts.of(world).kind() == judgement.verdict().kind());
    }
  }

  /** Every answer of an infection principle that is open or unmet on a plan is still shown so. */
  private static void stillStopped(Review before, Review review) {
    assertThat(infection(review)).isEqualTo(infection(before));
  }

  private static Map<String, String> infection(Review review) {
    Map<String, String> answers = new TreeMap<>();
    for (PlanDemands demands : review.demands()) {
      demands.demands().stream()
          .map(PlanDemands.Demand::answer)
          .filter(
              answer ->
                  PUBLISHED
                      .card(answer.principle())
                      .filter(card -> card.siteMayNotChange().isPresent())
                      .isPresent())
          .forEach(
              answer ->
                  answers.put(
                      demands.plan() + " " + answer.principle() + " " + answer.subject(),
                      answer.verdict() + " " + answer.severity()));
    }
    return answers;
  }

  private static void notFreeWhereStopped(JudgedCase local, Review review) {
    for (PrincipleTable.Row row : review.table().rows()) {
      for (int i = 0; i < row.cells().size(); i++) {
        String column = review.table().columns().get(i);
        boolean open =
            local.judgements().getOrDefault(column, List.of()).stream()
                .filter(j -> j.card().id().equals(row.principle()))
                .anyMatch(j -> j.is(VerdictKind.UNKNOWN));
        if (open) {
          assertThat(row.cells().get(i).verdict())
              .as(row.principle())
              .isIn(VerdictKind.UNKNOWN, VerdictKind.UNMET);
        }
      }
    }
    boolean stopped =
        local.subjects().stream()
            .filter(Subject::planned)
            .filter(subject -> local.caseFile().plans().size() == 1)
            .flatMap(subject -> local.of(subject).stream())
            .filter(j -> j.card().id().equals("infection-confirmatory-sign-stops-plan"))
            .anyMatch(j -> j.is(VerdictKind.UNMET));
    if (stopped) {
      assertThat(review.leavesCriticalOpen()).isTrue();
    }
  }
}
