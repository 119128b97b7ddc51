package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Reading;
import org.bonewright.principles.Card;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.Profile;
import org.bonewright.principles.Severity;
import org.bonewright.principles.Verdict;
import org.bonewright.principles.VerdictKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The table of principles, what was assumed, and what is not looked at. */
class TableAndCautionsTest {

  private static final String SPAN = "plate-span-ratio";
  private static final CaseText PLANNED = CaseText.plated().redone("plate-bent");

  @Test
  void the_table_shows_of_a_plan_the_worst_and_of_what_is_not_judged_that_it_does_not_apply() {
    JudgedByHand hand =
        JudgedByHand.of(PLANNED)
            .met("op-1", SPAN)
            .met("plan-a", SPAN)
            .unmet("plan-a/stage-1", SPAN, Severity.MAJOR);
    JudgedCase judged = hand.judged();
    PrincipleTable table =
        TableMaker.table(judged, JudgedByHand.RULES, new LocalMaker(JudgedByHand.RULES, judged));
    assertThat(table.columns()).containsExactly("op-1", "plan-a");
    assertThat(table.rows()).hasSameSizeAs(JudgedByHand.RULES.cards());
    for (PrincipleTable.Row row : table.rows()) {
      assertThat(row.cells())
          .extracting(PrincipleTable.Cell::verdict)
          .isEqualTo(
              row.principle().equals(SPAN)
                  ? List.of(VerdictKind.MET, VerdictKind.UNMET)
                  : List.of(VerdictKind.NOT_APPLICABLE, VerdictKind.NOT_APPLICABLE));
      if (row.principle().equals(SPAN)) {
        assertThat(row.cells().get(1).severity()).contains(Severity.MAJOR);
      }
    }
  }

  @Nested
  class What_was_assumed {

    private static List<Assumption> assumed(Verdict verdict, Reading... readings) {
      Card card = JudgedByHand.card("residual-gap-closed");
      JudgedByHand hand = JudgedByHand.of(PLANNED);
      JudgedCase judged = hand.judged();
      List<Judgement> all =
          java.util.Arrays.stream(readings)
              .map(
                  reading ->
                      new Judgement(
                          card,
                          JudgedByHand.RULES.family(card),
                          "op-1",
                          verdict,
                          Optional.empty(),
                          List.of(),
                          List.of(),
                          Map.of("gap", reading),
                          Map.of(),
                          List.of(),
                          Optional.empty()))
              .toList();
      return AssumptionMaker.assumptions(
          new JudgedCase(
              judged.caseFile(), judged.subjects(), judged.scenes(), Map.of("op-1", all)),
          JudgedByHand.RULES);
    }

    private static Reading gap(Kind kind) {
      return new Reading.Amount(1, 3, kind, "from a table", List.of());
    }

    @Test
    void is_told_once_with_the_subjects_that_it_served() {
      assertThat(assumed(new Verdict.Met(), gap(Kind.ASSUMED), gap(Kind.ASSUMED)))
          .singleElement()
          .satisfies(a -> assertThat(a.what()).endsWith(": from a table"))
          .satisfies(a -> assertThat(a.subjects()).containsExactly("op-1"));
    }

    @Test
    void is_no_fact_and_nothing_that_does_not_apply() {
      assertThat(assumed(new Verdict.Met(), gap(Kind.FACT))).isEmpty();
      assertThat(assumed(new Verdict.NotApplicable(), gap(Kind.ASSUMED))).isEmpty();
    }
  }

  @Nested
  class What_is_not_looked_at {

    @Test
    void is_nothing_that_the_usual_profile_shows() {
      assertThat(Cautions.notChecked(JudgedByHand.RULES, JudgedByHand.RULES.usual()))
          .noneMatch(caution -> caution.startsWith("The profile"));
    }

    @Test
    void is_what_a_profile_leaves_out() {
      Profile one = new Profile("one", "", "", Map.of("plate", List.of(SPAN)));
      int all = JudgedByHand.RULES.cards().size();
      assertThat(Cautions.notChecked(JudgedByHand.RULES, one).get(0))
          .isEqualTo(
              "The profile one leaves out "
                  + (all - 1)
                  + " of "
                  + all
                  + " principles: they are judged, and neither shown nor counted.");
    }

    @Test
    void is_every_family_without_a_principle() {
      List<String> empty =
          JudgedByHand.RULES.families().stream()
              .filter(
                  family ->
                      JudgedByHand.RULES.cards().stream()
                          .noneMatch(card -> JudgedByHand.RULES.family(card).equals(family)))
              .map(family -> family.title().substring(1))
              .toList();
      List<String> cautions = Cautions.notChecked(JudgedByHand.RULES, JudgedByHand.RULES.usual());
      assertThat(cautions).hasSize(empty.isEmpty() ? 0 : 1);
      empty.forEach(title -> assertThat(cautions.get(0)).contains(title));
    }

    @Test
    void is_always_said_to_be_no_decision() {
      assertThat(Cautions.always()).singleElement().asString().contains("not a decision");
    }
  }

  @Nested
  class What_a_site_changed {

    private static String inShort(int inUse, int unused, int differing, boolean invented) {
      LocalLimits.InUse one =
          new LocalLimits.InUse(
              new LocalChange(Optional.empty(), "", "", "", "", "", "", ""), List.of());
      return new LocalLimits(
              "here",
              "0",
              invented,
              java.util.Collections.nCopies(inUse, one),
              List.of(),
              unused,
              differing)
          .inShort();
    }

    @Test
    void is_counted_in_the_heading() {
      assertThat(inShort(1, 0, 0, false))
          .isEqualTo("here: 1 change in use; no verdict differs from the published");
      assertThat(inShort(2, 1, 1, true))
          .isEqualTo(
              "here (invented site): 2 changes in use, 1 not; 1 verdict differs from the published");
      assertThat(inShort(0, 3, 2, false))
          .isEqualTo("here: 0 changes in use, 3 not; 2 verdicts differ from the published");
    }
  }
}
