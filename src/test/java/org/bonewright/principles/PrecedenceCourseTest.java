package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a case file tells the rules of precedence. */
class PrecedenceCourseTest {

  private static final CaseText ONCE = CaseText.plated().redone("plate-bent");
  private static final String GAP = "residual-gap-closed"; // compression
  private static final Verdict UNMET =
      new Verdict.Unmet(Severity.CRITICAL, Severity.CRITICAL, "closed", List.of("closed"));

  /** Return the finding on a subject of a case in which the same is unmet everywhere. */
  private static Judgement on(CaseText text, String subject) {
    Card card = AllCells.RULES.card(GAP).orElseThrow();
    List<Subject> subjects = Subject.of(text.file());
    Map<String, Scene> scenes = new HashMap<>();
    Map<String, List<Judgement>> judgements = new HashMap<>();
    for (Subject each : subjects) {
      scenes.put(each.id(), new Scene(each, AllCells.RULES.measures()));
      judgements.put(
          each.id(),
          List.of(
              new Judgement(
                  card,
                  AllCells.RULES.family(card),
                  each.id(),
                  UNMET,
                  Precedence.baseSeverity(UNMET),
                  List.of(),
                  List.of(),
                  Map.of(),
                  Map.of(),
                  List.of(),
                  Optional.empty())));
    }
    return new Precedence(AllCells.RULES.rules(), Optional.empty())
        .apply(new JudgedCase(text.file(), subjects, scenes, judgements))
        .judgements()
        .get(subject)
        .get(0);
  }

  @Nested
  class Infection {

    private static List<String> labels(String signs) {
      return on(ONCE.with("{findings: [{day: 210, infection: {" + signs + "}}]}"), "plan-a/stage-1")
          .labels();
    }

    @Test
    void comes_first_where_one_sign_proves_it() {
      assertThat(labels("pus: 'present'")).containsExactly("infection comes first");
    }

    @Test
    void does_not_where_none_does_or_nobody_looked() {
      assertThat(labels("pus: 'absent', sinus: 'absent', woundBreakdown: 'absent'")).isEmpty();
      assertThat(labels("fever: 'present'")).isEmpty();
      assertThat(on(ONCE, "plan-a/stage-1").labels()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"united, MINOR", "failed, CRITICAL", "unknown, CRITICAL"})
  void only_union_excuses_what_was_done(String result, Severity counts) {
    CaseText text = CaseText.plated().at("/operations/0", "{outcome: {result: '" + result + "'}}");
    assertThat(on(text, "op-1").severity()).contains(counts);
  }

  @Test
  void an_operation_that_nobody_followed_up_is_not_taken_to_have_united() {
    assertThat(on(CaseText.plated(), "op-1").severity()).contains(Severity.CRITICAL);
  }

  @Test
  void what_may_be_unmet_counts_at_its_worst_and_what_cannot_be_has_no_severity() {
    assertThat(Precedence.baseSeverity(open(VerdictKind.MET, VerdictKind.UNMET)))
        .contains(Severity.MAJOR);
    assertThat(Precedence.baseSeverity(open(VerdictKind.MET, VerdictKind.NOT_APPLICABLE)))
        .isEmpty();
    assertThat(Precedence.baseSeverity(new Verdict.Met())).isEmpty();
  }

  private static Verdict open(VerdictKind... possible) {
    return new Verdict.Unknown(Set.of(possible), Severity.MAJOR, List.of(), List.of());
  }
}
