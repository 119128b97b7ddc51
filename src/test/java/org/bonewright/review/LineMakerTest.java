package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Card;
import org.bonewright.principles.Decisions.Step;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Severity;
import org.bonewright.principles.SeverityStep;
import org.bonewright.principles.Turn;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What stands in the line of a verdict. */
class LineMakerTest {

  private static final String STAGE = "plan-a/stage-1";
  private static final String GAP = "residual-gap-closed";
  private static final Verdict UNMET =
      new Verdict.Unmet(Severity.MAJOR, Severity.MAJOR, "closed", List.of("closed"));

  private static CaseText text() {
    return CaseText.plated().redone("plate-bent");
  }

  private static Line line(String principle, Verdict verdict, Map<String, Reading> readings) {
    return line(text(), judgement(principle, verdict, List.of(), readings, List.of()));
  }

  private static Line line(CaseText text, Judgement judgement) {
    return JudgedByHand.of(text).lines().line(judgement);
  }

  private static Judgement judgement(
      String principle,
      Verdict verdict,
      List<SeverityStep> steps,
      Map<String, Reading> readings,
      List<Turn> turns) {
    Card card = JudgedByHand.card(principle);
    return new Judgement(
        card,
        JudgedByHand.RULES.family(card),
        STAGE,
        verdict,
        Optional.of(Severity.MAJOR),
        steps,
        List.of("for the later stage"),
        readings,
        Map.of(),
        turns,
        Optional.empty());
  }

  @Test
  void carries_severity_labels_and_verdict_as_they_were_judged() {
    Line line = line(GAP, UNMET, Map.of());
    assertThat(line.verdict()).isEqualTo(VerdictKind.UNMET);
    assertThat(line.severity()).contains(Severity.MAJOR);
    assertThat(line.labels()).containsExactly("for the later stage");
    assertThat(line.subject()).isEqualTo(STAGE);
  }

  @Test
  void names_a_remedy_only_where_something_is_unmet() {
    assertThat(line(GAP, UNMET, Map.of()).remedy()).isNotBlank();
    assertThat(line(GAP, new Verdict.Met(), Map.of()).remedy()).isEmpty();
  }

  @Nested
  class Steps {

    @Test
    void begin_with_a_milder_severity_that_what_is_not_known_leaves_possible() {
      Verdict either =
          new Verdict.Unmet(Severity.CRITICAL, Severity.MINOR, "closed", List.of("closed"));
      Line line =
          line(
              text(),
              judgement(
                  GAP,
                  either,
                  List.of(new SeverityStep(Step.OUTCOME, Severity.CRITICAL, Severity.MINOR)),
                  Map.of(),
                  List.of()));
      assertThat(line.steps())
          .containsExactly("or minor, by what is not known", "the fracture united, else critical");
    }

    @Test
    void are_none_where_the_severity_is_certain_and_stayed() {
      assertThat(line(GAP, UNMET, Map.of()).steps()).isEmpty();
    }
  }

  @Nested
  class The_other_view {

    private static final String DISPUTED = "locking-screws-per-side";

    @Test
    void is_told_where_the_disputed_limit_decided_and_nowhere_else() {
      assertThat(
              line(
                      DISPUTED,
                      new Verdict.Unmet(
                          Severity.MAJOR, Severity.MAJOR, "twoShort", List.of("twoShort")),
                      Map.of())
                  .otherView())
          .isPresent();
      assertThat(
              line(
                      DISPUTED,
                      new Verdict.Unmet(Severity.MAJOR, Severity.MAJOR, "least", List.of("least")),
                      Map.of())
                  .otherView())
          .isEmpty();
      assertThat(line(DISPUTED, new Verdict.Met(), Map.of()).otherView()).isEmpty();
    }
  }

  @Nested
  class An_acceptance {

    private static Optional<String> accepted(String principle, String on, Verdict verdict) {
      CaseText accepted =
          text()
              .with(
                  "{accepted: [{principle: '%s', on: '%s', reason: 'wish', by: 'consultant'}]}"
                      .formatted(principle, on));
      return line(accepted, judgement(GAP, verdict, List.of(), Map.of(), List.of())).accepted();
    }

    @Test
    void stands_beside_what_is_unmet_on_its_plan() {
      assertThat(accepted(GAP, "plan-a", UNMET)).contains("wish (consultant)");
    }

    @Test
    void stands_beside_nothing_else() {
      assertThat(accepted(GAP, "plan-b", UNMET)).isEmpty();
      assertThat(accepted("plate-span-ratio", "plan-a", UNMET)).isEmpty();
      assertThat(accepted(GAP, "plan-a", new Verdict.Met())).isEmpty();
    }

    @Test
    void of_what_nobody_may_accept_is_refused() {
      String never = "infection-needs-stability";
      CaseText accepted =
          text()
              .with(
                  "{accepted: [{principle: '%s', on: 'plan-a', reason: 'wish', by: 'consultant'}]}"
                      .formatted(never));
      String limit = JudgedByHand.card(never).say().unmet().keySet().iterator().next();
      Verdict unmet =
          new Verdict.Unmet(Severity.CRITICAL, Severity.CRITICAL, limit, List.of(limit));
      assertThat(line(accepted, judgement(never, unmet, List.of(), Map.of(), List.of())).accepted())
          .contains("not open to acceptance");
    }
  }

  @Nested
  class What_was_read {

    private static Line.Measured gap(Reading reading) {
      List<Line.Measured> readings = line(GAP, UNMET, Map.of("gap", reading)).readings();
      assertThat(readings).hasSize(1);
      return readings.get(0);
    }

    @Test
    void is_told_with_unit_and_where_it_comes_from() {
      Line.Measured fact = gap(new Reading.Amount(3, 3, Kind.FACT, "as told", List.of()));
      assertThat(fact.unit()).isEqualTo("mm");
      assertThat(fact.kind()).isEqualTo("fact");
      assertThat(gap(new Reading.Amount(1, 3, Kind.ASSUMED, "", List.of())).kind())
          .isEqualTo("assumed");
    }

    @Test
    void of_a_model_is_marked_as_such_with_its_samples() {
      Line.Measured model =
          gap(new Reading.Sampled(3, Collections.nCopies(200, 3.0), "", "the load", List.of()));
      assertThat(model.kind()).isEqualTo("model");
      assertThat(model.unit()).isEqualTo("mm");
      assertThat(model.sampled().orElseThrow().samples()).isEqualTo(200);
      assertThat(model.sampled().orElseThrow().decides()).isEqualTo("the load");
    }

    @Test
    void that_is_nothing_or_unknown_has_no_unit_and_is_never_a_fact() {
      Line.Measured none = gap(new Reading.None("no plate"));
      assertThat(none.kind()).isEqualTo("none");
      assertThat(none.unit()).isEmpty();
      Line.Measured unknown = gap(Reading.unknown(JudgedByHand.fact("gap")));
      assertThat(unknown.kind()).isEqualTo("unknown");
      assertThat(unknown.sampled()).isEmpty();
    }

    @Test
    void is_told_as_a_clause_with_its_working_where_there_is_one() {
      Reading worked = new Reading.Amount(3, 3, Kind.FACT, "by hand", List.of());
      assertThat(line(GAP, UNMET, Map.of("gap", worked)).workings())
          .singleElement()
          .satisfies(clause -> assertThat(clause).endsWith("3 mm (by hand)"));
      Reading plain = new Reading.Amount(3, 3, Kind.FACT, "", List.of());
      assertThat(line(GAP, UNMET, Map.of("gap", plain)).workings())
          .singleElement()
          .satisfies(clause -> assertThat(clause).endsWith("3 mm"));
    }
  }

  @Test
  void a_turn_says_what_would_become_of_it() {
    Line line =
        line(
            text(),
            judgement(
                GAP,
                UNMET,
                List.of(),
                Map.of(),
                List.of(new Turn("gap", "at most 1", VerdictKind.MET))));
    assertThat(line.turns())
        .singleElement()
        .satisfies(turn -> assertThat(turn).startsWith("met if ").endsWith(" were at most 1"));
  }
}
