package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

/** Mechanical findings are counted from certainly to possibly unmet at major or critical. */
class MechanicalFaultsTest {

  private static final Verdict MET = new Verdict.Met();
  private static final Verdict MINOR = unmet(Severity.MINOR, Severity.MINOR);
  private static final Verdict MAJOR = unmet(Severity.MAJOR, Severity.MAJOR);
  private static final Verdict PERHAPS_MAJOR = unmet(Severity.MAJOR, Severity.MINOR);
  private static final Verdict OPEN =
      new Verdict.Unknown(
          Set.of(VerdictKind.MET, VerdictKind.UNMET), Severity.MAJOR, List.of(), List.of());

  private static final CaseText ONCE = CaseText.plated().redone("plate-bent");

  private static Verdict unmet(Severity severity, Severity mildest) {
    return new Verdict.Unmet(severity, mildest, "any", List.of());
  }

  private static Judgement judgement(String principle, Verdict verdict) {
    Card card = AllCells.RULES.card(principle).orElseThrow();
    return new Judgement(
        card,
        AllCells.RULES.family(card),
        "any",
        verdict,
        Optional.empty(),
        List.of(),
        List.of(),
        Map.of(),
        Map.of(),
        List.of(),
        Optional.empty());
  }

  private static Judgement span(Verdict verdict) {
    return judgement("plate-span-ratio", verdict);
  }

  private static Judgement hold(Verdict verdict) {
    return judgement("cortices-per-side-conventional", verdict);
  }

  private static String count(
      String count, String subject, CaseText text, Map<String, List<Judgement>> judged) {
    Reading reading = new VerdictCounts(judged).read(count, Taken.subject(text.file(), subject));
    return reading.shown();
  }

  private static String here(Judgement... judgements) {
    return count(
        MechanicalFaults.HERE, "op-1", CaseText.plated(), Map.of("op-1", List.of(judgements)));
  }

  @Test
  void what_is_unmet_at_major_counts_and_what_is_minor_or_met_does_not() {
    assertThat(here(span(MAJOR), hold(MINOR))).isEqualTo("1");
    assertThat(here(span(MAJOR), hold(MAJOR))).isEqualTo("2");
    assertThat(here(span(MET), hold(MINOR))).isEqualTo("0");
  }

  @Test
  void what_may_be_major_counts_as_possible() {
    assertThat(here(span(MAJOR), hold(OPEN))).isEqualTo("1–2");
    assertThat(here(span(PERHAPS_MAJOR))).isEqualTo("0–1");
  }

  @Test
  void findings_of_other_families_are_not_mechanical() {
    assertThat(here(judgement("five-deep-samples", MAJOR))).isEqualTo("0");
  }

  @Test
  void a_finding_is_left_when_the_plan_does_not_correct_it() {
    Map<String, List<Judgement>> judged =
        Map.of(
            "op-1",
            List.of(span(MAJOR), hold(MAJOR)),
            "plan-a/stage-1",
            List.of(span(MET), hold(MAJOR)));
    assertThat(count(MechanicalFaults.BEFORE, "plan-a/stage-1", ONCE, judged)).isEqualTo("2");
    assertThat(count(MechanicalFaults.LEFT, "plan-a/stage-1", ONCE, judged)).isEqualTo("1");
    assertThat(count(MechanicalFaults.LEFT, "plan-a", ONCE, judged)).isEqualTo("1");
  }

  @Test
  void a_finding_that_is_new_is_not_left_and_one_that_was_open_may_be() {
    Map<String, List<Judgement>> judged =
        Map.of(
            "op-1",
            List.of(span(OPEN), hold(MET)),
            "plan-a/stage-1",
            List.of(span(MAJOR), hold(MAJOR)));
    assertThat(count(MechanicalFaults.LEFT, "plan-a/stage-1", ONCE, judged)).isEqualTo("0–1");
  }

  @Test
  void there_is_none_before_the_first_operation_and_a_stage_is_passed_over() {
    assertThat(count(MechanicalFaults.BEFORE, "op-1", ONCE, Map.of())).isEqualTo("none");
    CaseText staged = ONCE.at("/operations/0/outcome", "{result: 'stage-done', mode: null}");
    assertThat(count(MechanicalFaults.BEFORE, "plan-a/stage-1", staged, Map.of()))
        .isEqualTo("none");
  }

  @Test
  void a_finding_is_cleared_when_it_is_certainly_gone_and_perhaps_when_that_is_open() {
    Map<String, List<Judgement>> judged =
        Map.of(
            "op-1",
            List.of(span(MAJOR), hold(MAJOR)),
            "plan-a/stage-1",
            List.of(span(MET), hold(MAJOR)));
    assertThat(count(MechanicalFaults.CLEARED, "plan-a", ONCE, judged)).isEqualTo("1");
    Map<String, List<Judgement>> open =
        Map.of("op-1", List.of(span(MAJOR)), "plan-a/stage-1", List.of(span(OPEN)));
    assertThat(count(MechanicalFaults.CLEARED, "plan-a", ONCE, open)).isEqualTo("0–1");
  }

  @Test
  void grave_findings_are_those_of_every_family_but_of_the_records() {
    Map<String, List<Judgement>> judged =
        Map.of(
            "op-1",
            List.of(
                span(MINOR),
                judgement("five-deep-samples", MAJOR),
                judgement("failure-mode-read", MAJOR)));
    assertThat(count(MechanicalFaults.GRAVE, "plan-a", ONCE, judged)).isEqualTo("1");
  }
}
