package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.argumentSet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Decisions.Step;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules about the rules: labels and steps of severity, never another verdict. */
class PrecedenceTest {

  private static Course course(String subject, boolean infected, boolean united) {
    return new Course(subject, infected, false, false, united);
  }

  private static Course stage(String subject, boolean treatedBefore, boolean stageAfter) {
    return new Course(subject, true, treatedBefore, stageAfter, false);
  }

  private static Judged unmet(String principle, String family, int round) {
    return new Judged(principle, family, "hold", "op-" + round, round, "unmet", false);
  }

  private static Judged disputed(String principle, int round) {
    return new Judged(principle, "plate", "hold", "op-" + round, round, "unmet", true);
  }

  private static Decisions decide(Object... facts) {
    return AllCells.RULES.rules().decide(List.of(facts));
  }

  private static SeverityStep step(Step step, Severity from, Severity to) {
    return new SeverityStep(step, from, to);
  }

  @Nested
  class Infection {

    @ParameterizedTest
    @ValueSource(strings = {"compression", "graft"})
    void comes_before_compression_and_graft(String family) {
      Judged judged = unmet("any", family, 1);
      assertThat(decide(course("op-1", true, false), judged).labels(judged))
          .containsExactly("infection comes first");
    }

    @ParameterizedTest
    @ValueSource(strings = {"compression", "graft"})
    void sends_compression_and_graft_to_the_stage_after_the_one_that_treats_it(String family) {
      Judged judged = unmet("any", family, 1);
      assertThat(decide(stage("op-1", false, true), judged).labels(judged))
          .containsExactly("for the later stage");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void lets_the_stages_after_the_one_that_treats_it_be_judged_as_they_are(boolean more) {
      Judged judged = unmet("any", "graft", 1);
      Decisions decisions = decide(stage("op-1", true, more), judged);
      assertThat(decisions.labels(judged)).isEmpty();
      assertThat(decisions.steps(judged, Severity.CRITICAL, Severity.CRITICAL)).isEmpty();
    }

    @Test
    void says_nothing_of_other_families_or_subjects() {
      Judged plate = unmet("any", "plate", 1);
      Judged before = unmet("any", "graft", 0);
      Decisions decisions = decide(course("op-1", true, false), plate, before);
      assertThat(decisions.labels(plate)).isEmpty();
      assertThat(decisions.labels(before)).isEmpty();
    }

    @Test
    void delays_and_caps_nothing_that_forbids_a_graft_because_of_it() {
      Judged judged = new Judged("any", "graft", "infection", "op-1", 1, "unmet", false);
      Decisions decisions = decide(course("op-1", true, true), judged);
      assertThat(decisions.labels(judged)).isEmpty();
      assertThat(decisions.steps(judged, Severity.CRITICAL, Severity.CRITICAL)).isEmpty();
    }

    @Test
    void says_nothing_where_it_is_not_certain() {
      Judged judged = unmet("any", "graft", 1);
      assertThat(decide(course("op-1", false, false), judged).labels(judged)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Severity.class)
    void takes_no_step_of_severity(Severity base) {
      Judged judged = unmet("any", "graft", 1);
      assertThat(decide(course("op-1", true, false), judged).steps(judged, base, Severity.CRITICAL))
          .isEmpty();
    }
  }

  @Nested
  class Union {

    @ParameterizedTest
    @EnumSource(
        value = Severity.class,
        names = {"MAJOR", "CRITICAL"})
    void makes_a_fault_minor_at_most(Severity base) {
      Judged judged = unmet("any", "plate", 0);
      assertThat(decide(course("op-0", false, true), judged).steps(judged, base, Severity.CRITICAL))
          .containsExactly(step(Step.OUTCOME, base, Severity.MINOR));
    }

    @ParameterizedTest
    @EnumSource(
        value = Severity.class,
        names = {"NOTE", "MINOR"})
    void leaves_what_is_mild(Severity base) {
      Judged judged = unmet("any", "plate", 0);
      assertThat(decide(course("op-0", false, true), judged).steps(judged, base, Severity.CRITICAL))
          .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"infection", "safety"})
    void excuses_neither_infection_nor_safety(String family) {
      Judged judged = unmet("any", family, 0);
      assertThat(
              decide(course("op-0", false, true), judged)
                  .steps(judged, Severity.CRITICAL, Severity.CRITICAL))
          .isEmpty();
    }

    @Test
    void excuses_no_other_operation() {
      Judged judged = unmet("any", "plate", 1);
      assertThat(
              decide(course("op-0", false, true), judged)
                  .steps(judged, Severity.CRITICAL, Severity.CRITICAL))
          .isEmpty();
    }
  }

  @Test
  void a_repeat_raises_no_further_than_the_gravest_that_the_principle_can_be() {
    Judged before = unmet("any", "plate", 0);
    Judged again = unmet("any", "plate", 1);
    assertThat(decide(before, again).steps(again, Severity.MAJOR, Severity.MAJOR)).isEmpty();
    assertThat(decide(before, again).steps(again, Severity.MINOR, Severity.MAJOR))
        .containsExactly(step(Step.REPEAT, Severity.MINOR, Severity.MAJOR));
  }

  @Nested
  class Dispute {

    @Test
    void makes_a_fault_major_at_most() {
      Judged judged = disputed("any", 0);
      assertThat(decide(judged).steps(judged, Severity.CRITICAL, Severity.CRITICAL))
          .containsExactly(step(Step.DISPUTE, Severity.CRITICAL, Severity.MAJOR));
    }

    @ParameterizedTest
    @EnumSource(
        value = Severity.class,
        names = {"NOTE", "MINOR", "MAJOR"})
    void leaves_what_is_milder(Severity base) {
      Judged judged = disputed("any", 0);
      assertThat(decide(judged).steps(judged, base, Severity.CRITICAL)).isEmpty();
    }

    @Test
    void adds_nothing_once_the_bone_has_united() {
      Judged judged = disputed("any", 0);
      assertThat(
              decide(course("op-0", false, true), judged)
                  .steps(judged, Severity.CRITICAL, Severity.CRITICAL))
          .containsExactly(step(Step.OUTCOME, Severity.CRITICAL, Severity.MINOR));
    }
  }

  @Nested
  class Repeat {

    private final Judged before = unmet("any", "plate", 0);
    private final Judged again = unmet("any", "plate", 1);

    @ParameterizedTest
    @EnumSource(value = Severity.class, names = "CRITICAL", mode = EnumSource.Mode.EXCLUDE)
    void raises_a_fault_by_one_step(Severity base) {
      assertThat(decide(before, again).steps(again, base, Severity.CRITICAL))
          .containsExactly(step(Step.REPEAT, base, base.raised()));
    }

    @Test
    void cannot_raise_what_is_critical() {
      assertThat(decide(before, again).steps(again, Severity.CRITICAL, Severity.CRITICAL))
          .isEmpty();
    }

    @Test
    void raises_the_later_one_only() {
      assertThat(decide(before, again).steps(before, Severity.MINOR, Severity.CRITICAL)).isEmpty();
    }

    @Test
    void raises_once_after_two_in_a_row() {
      Judged third = unmet("any", "plate", 2);
      assertThat(decide(before, again, third).steps(third, Severity.NOTE, Severity.CRITICAL))
          .containsExactly(step(Step.REPEAT, Severity.NOTE, Severity.MINOR));
    }

    @ParameterizedTest
    @ValueSource(strings = {"met", "unknown", "not-applicable"})
    void is_none_if_it_was_not_unmet_before(String verdict) {
      Judged other = new Judged("any", "plate", "hold", "op-0", 0, verdict, false);
      assertThat(decide(other, again).steps(again, Severity.MINOR, Severity.CRITICAL)).isEmpty();
    }

    @Test
    void is_none_by_another_principle_or_two_operations_ago() {
      Judged other = unmet("other", "plate", 1);
      Judged third = unmet("any", "plate", 2);
      Decisions decisions = decide(before, other, third);
      assertThat(decisions.steps(other, Severity.MINOR, Severity.CRITICAL)).isEmpty();
      assertThat(decisions.steps(third, Severity.MINOR, Severity.CRITICAL)).isEmpty();
    }

    @Test
    void raises_every_stage_of_a_plan_and_no_stage_for_another() {
      Judged first = new Judged("any", "plate", "hold", "plan-a/stage-1", 1, "unmet", false);
      Judged second = new Judged("any", "plate", "hold", "plan-a/stage-2", 1, "unmet", false);
      assertThat(decide(before, first, second).steps(second, Severity.MINOR, Severity.CRITICAL))
          .hasSize(1);
      assertThat(decide(first, second).steps(second, Severity.MINOR, Severity.CRITICAL)).isEmpty();
    }

    @Test
    void never_goes_past_what_a_dispute_allows() {
      Judged now = disputed("any", 1);
      Decisions decisions = decide(before, now);
      assertThat(decisions.steps(now, Severity.MINOR, Severity.CRITICAL))
          .containsExactly(step(Step.REPEAT, Severity.MINOR, Severity.MAJOR));
      assertThat(decisions.steps(now, Severity.MAJOR, Severity.CRITICAL)).isEmpty();
      assertThat(decisions.steps(now, Severity.CRITICAL, Severity.CRITICAL))
          .containsExactly(step(Step.DISPUTE, Severity.CRITICAL, Severity.MAJOR));
    }

    @Test
    void never_goes_past_what_union_allows() {
      Decisions decisions = decide(course("op-1", false, true), before, again);
      assertThat(decisions.steps(again, Severity.NOTE, Severity.CRITICAL))
          .containsExactly(step(Step.REPEAT, Severity.NOTE, Severity.MINOR));
      assertThat(decisions.steps(again, Severity.MINOR, Severity.CRITICAL)).isEmpty();
      assertThat(decisions.steps(again, Severity.MAJOR, Severity.CRITICAL))
          .containsExactly(step(Step.OUTCOME, Severity.MAJOR, Severity.MINOR));
    }
  }

  @Nested
  class Steps {

    private final Judged judged = unmet("any", "plate", 0);
    private final Decisions decisions = new Decisions();

    @Test
    void are_taken_in_order_each_from_where_the_last_one_ended() {
      decisions.raise(judged);
      decisions.cap(judged, "dispute", "minor");
      decisions.cap(judged, "bone", "major");
      assertThat(decisions.steps(judged, Severity.CRITICAL, Severity.CRITICAL))
          .containsExactly(
              step(Step.BONE, Severity.CRITICAL, Severity.MAJOR),
              step(Step.DISPUTE, Severity.MAJOR, Severity.MINOR));
    }

    @Test
    void of_one_kind_are_one_step_to_the_mildest() {
      decisions.cap(judged, "bone", "minor");
      decisions.cap(judged, "bone", "major");
      assertThat(decisions.steps(judged, Severity.CRITICAL, Severity.CRITICAL))
          .containsExactly(step(Step.BONE, Severity.CRITICAL, Severity.MINOR));
    }
  }

  @Nested
  class InAJudgedCase {

    /** A case of one operation and a plan, with one and the same verdict on both. */
    private JudgedCase judged(String principle, Verdict verdict) {
      return judged(principle, subject -> verdict);
    }

    private JudgedCase judged(String principle, Function<Subject, Verdict> verdicts) {
      BaseCase base = BaseCase.of("humerus-locking-plate-nonunion-plan");
      List<Subject> subjects = Subject.of(base.caseFile());
      Map<String, Scene> scenes = new LinkedHashMap<>();
      Map<String, List<Judgement>> judgements = new LinkedHashMap<>();
      for (Subject subject : subjects) {
        scenes.put(subject.id(), new Scene(subject, AllCells.RULES.measures()));
        judgements.put(
            subject.id(), List.of(judgement(principle, subject, verdicts.apply(subject))));
      }
      return new Precedence(AllCells.RULES.rules(), Optional.empty())
          .apply(new JudgedCase(base.caseFile(), subjects, scenes, judgements));
    }

    private Judgement judgement(String principle, Subject subject, Verdict verdict) {
      Card card = AllCells.RULES.card(principle).orElseThrow();
      return new Judgement(
          card,
          AllCells.RULES.family(card),
          subject.id(),
          verdict,
          Precedence.baseSeverity(verdict),
          List.of(),
          List.of(),
          Map.of(),
          Map.of(),
          List.of(),
          Optional.empty());
    }

    private static Verdict unmet(Severity severity, String limit) {
      return new Verdict.Unmet(severity, severity, limit, List.of(limit));
    }

    @Test
    void a_limit_in_dispute_counts_as_major_at_most_and_others_in_full() {
      JudgedCase disputed = judged("locking-screws-per-side", unmet(Severity.CRITICAL, "twoShort"));
      JudgedCase other = judged("locking-screws-per-side", unmet(Severity.CRITICAL, "least"));
      assertThat(all(disputed))
          .extracting(Judgement::severity)
          .containsOnly(Optional.of(Severity.MAJOR));
      assertThat(all(disputed).get(0).steps())
          .containsExactly(step(Step.DISPUTE, Severity.CRITICAL, Severity.MAJOR));
      assertThat(all(other))
          .extracting(Judgement::severity)
          .containsOnly(Optional.of(Severity.CRITICAL));
    }

    @Test
    void a_plan_that_repeats_what_the_last_operation_left_unmet_counts_one_step_more() {
      JudgedCase case_ = judged("plate-span-ratio", unmet(Severity.MINOR, "zone"));
      for (Subject subject : case_.subjects()) {
        boolean repeats = subject.planned() || !subject.before().isEmpty();
        assertThat(case_.of(subject).get(0).severity())
            .contains(repeats ? Severity.MAJOR : Severity.MINOR);
      }
    }

    @Test
    void what_is_met_has_no_severity() {
      assertThat(all(judged("plate-span-ratio", new Verdict.Met())))
          .allMatch(judgement -> judgement.severity().isEmpty() && judgement.steps().isEmpty());
    }

    static Stream<Verdict> notUnmet() {
      return Stream.of(new Verdict.Met(), new Verdict.NotApplicable());
    }

    @ParameterizedTest
    @MethodSource("notUnmet")
    void what_was_unmet_before_and_cannot_be_unmet_now_is_not_raised(Verdict now) {
      JudgedCase case_ =
          judged(
              "plate-span-ratio",
              subject -> subject.planned() ? now : unmet(Severity.MINOR, "zone"));
      assertThat(case_.subjects()).anyMatch(Subject::planned).anyMatch(s -> !s.planned());
      assertThat(case_.subjects().stream().filter(Subject::planned))
          .flatExtracting(case_::of)
          .allMatch(judgement -> judgement.severity().isEmpty() && judgement.steps().isEmpty());
    }

    private static List<Judgement> all(JudgedCase judged) {
      return judged.subjects().stream().flatMap(s -> judged.of(s).stream()).toList();
    }
  }

  static Stream<Arguments> bases() {
    return BaseCase.all().stream().map(base -> argumentSet(base.name(), base));
  }

  /** The verdicts of a judged case are those that its readings alone give. */
  @ParameterizedTest
  @MethodSource("bases")
  void never_changes_a_verdict(BaseCase base) {
    JudgedCase judged = new Judge(AllCells.RULES).judge(base.caseFile());
    List<Judgement> all = new ArrayList<>();
    judged.subjects().forEach(subject -> all.addAll(judged.of(subject)));
    assertThat(all).isNotEmpty();
    for (Judgement judgement : all) {
      Worlds former = AllCells.RULES.worlds(judgement.card());
      List<World> worlds = former.of(judgement.readings());
      Verdicts said = AllCells.RULES.rules().judge(worlds);
      Verdict alone = new CardVerdict(former, worlds, said, judgement.readings()).verdict();
      assertThat(judgement.verdict()).isEqualTo(alone);
    }
  }
}
