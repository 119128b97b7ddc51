package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseText;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ReviewerTest {

  private static final Reviewer REVIEWER = new Reviewer(RuleSet.built());
  private static final String QUIET =
      """
      {findings: [{day: 1, infection: {sinus: 'absent', pus: 'absent', woundBreakdown: 'absent',
        samples: {taken: 0}, histology: 'not-done'}}]}
      """;

  private static Review review(CaseText text) {
    return REVIEWER.review(text.file());
  }

  private static CaseText replated() {
    return CaseText.plated().redone("screws-pulled-out-in-sequence").with(QUIET);
  }

  private static Chapter chapter(Review review, String subject) {
    return review.chapters().stream()
        .filter(chapter -> chapter.subject().equals(subject))
        .findFirst()
        .orElseThrow();
  }

  private static Stream<Line> unmet(Chapter chapter) {
    return Stream.concat(chapter.fits().stream(), chapter.others().stream())
        .flatMap(h -> Stream.concat(Stream.of(h.lead()), h.nested().stream()));
  }

  private static Line unmet(Chapter chapter, String principle) {
    return unmet(chapter).filter(l -> l.principle().equals(principle)).findFirst().orElseThrow();
  }

  @Nested
  class A_plan {

    @Test
    void that_repeats_the_failed_construct_leaves_something_critical_open() {
      Review review = review(replated());

      assertThat(review.leavesCriticalOpen()).isTrue();
      assertThat(unmet(chapter(review, "plan-a"), "revision-changes-failed-factor").severity())
          .contains(Severity.CRITICAL);
    }

    @Test
    void stays_open_even_where_a_surgeon_accepts_it() {
      Review review =
          review(
              replated()
                  .with(
                      "{accepted: [{principle: 'revision-changes-failed-factor', on: 'plan-a',"
                          + " reason: 'patient wish', by: 'consultant'}]}"));

      assertThat(review.leavesCriticalOpen()).isTrue();
      assertThat(unmet(chapter(review, "plan-a"), "revision-changes-failed-factor").accepted())
          .contains("patient wish (consultant)");
    }

    @Test
    void that_is_not_chosen_does_not_decide_the_exit_code() {
      CaseText two =
          replated().with("{plans: [{id: 'plan-b', chosen: true, stages: [{id: 'stage-9'}]}]}");

      assertThat(review(two).demands()).extracting(PlanDemands::plan).containsExactly("plan-b");
    }

    @Test
    void must_achieve_what_the_history_left_unmet() {
      PlanDemands demands = review(replated()).demands().get(0);

      assertThat(demands.demands())
          .filteredOn(d -> d.answer().principle().equals("five-deep-samples"))
          .singleElement()
          .satisfies(d -> assertThat(d.answer().verdict()).isEqualTo(VerdictKind.UNMET));
    }

    @Test
    void is_not_asked_for_where_there_is_none() {
      Review review = review(CaseText.plated());

      assertThat(review.demands()).isEmpty();
      assertThat(review.leavesCriticalOpen()).isFalse();
      assertThat(review.summary()).contains("No plan is on file");
    }
  }

  @Nested
  class Infection {

    @Test
    void confirmed_makes_an_ordinary_plan_critically_unmet_and_is_a_red_flag() {
      Review review =
          review(replated().with("{findings: [{day: 190, infection: {pus: 'present'}}]}"));

      assertThat(review.redFlags())
          .extracting(RedFlag::what)
          .filteredOn(what -> what.toLowerCase(Locale.ROOT).contains("pus"))
          .containsExactly("Proof of infection: pus");
      assertThat(
              unmet(chapter(review, "plan-a"), "infection-confirmatory-sign-stops-plan").severity())
          .contains(Severity.CRITICAL);
    }

    @Test
    void confirmed_comes_before_compression_where_the_plan_has_one_stage() {
      Review review =
          review(
              replated()
                  .with("{findings: [{day: 190, infection: {pus: 'present'}}]}")
                  .at("/plans/0/stages/0", "{reduction: {gapNearMm: 3}}"));

      assertThat(unmet(chapter(review, "plan-a/stage-1"), "residual-gap-closed").labels())
          .containsExactly("infection comes first");
    }

    @Test
    void treated_at_the_first_stage_leaves_the_compression_of_the_second_to_be_judged_as_it_is() {
      Review review = review(staged("{debridement: 'yes', antibioticWeeks: 6}"));

      assertThat(labels(review, "plan-a/stage-1")).containsExactly("for the later stage");
      assertThat(labels(review, "plan-a/stage-2")).isEmpty();
    }

    @Test
    void that_no_stage_treats_comes_before_the_compression_of_every_stage() {
      Review review = review(staged("{antibioticWeeks: 6}"));

      assertThat(labels(review, "plan-a/stage-1")).containsExactly("infection comes first");
      assertThat(labels(review, "plan-a/stage-2")).containsExactly("infection comes first");
    }

    /** A plan that plates a gap twice; its first stage does this about the infection. */
    private static CaseText staged(String care) {
      String plating =
          "concept: 'absolute', reduction: {gapNearMm: 3}, compression: {method: 'eccentric-screws'},"
              + " fixation: [{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow',"
              + " holes: 10, place: {zoneBetweenHoles: [5, 6]},"
              + " screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2}]}]";
      return replated()
          .with("{findings: [{day: 190, infection: {pus: 'present'}}]}")
          .at(
              "/plans/0",
              "{stages: [{id: 'stage-1', infectionCare: %s, %s}, {id: 'stage-2', %s}]}"
                  .formatted(care, plating, plating));
    }

    private static List<String> labels(Review review, String stage) {
      return unmet(chapter(review, stage), "residual-gap-closed").labels();
    }

    @Test
    void that_nobody_looked_for_is_a_red_flag_before_a_plan() {
      assertThat(review(CaseText.plated().redone("plate-bent")).redFlags())
          .extracting(RedFlag::what)
          .contains("Key data missing: no examination for infection on file");
    }
  }

  @Nested
  class A_past_operation {

    @Test
    void that_united_is_minor_at_most_save_for_infection() {
      Review review =
          review(
              CaseText.plated()
                  .at("/operations/0/fixation/0", "{screws: [{at: [1, 10], type: 'cortical'}]}")
                  .at("/operations/0", "{outcome: {result: 'united', day: 200}}"));

      Line line = unmet(chapter(review, "op-1"), "cortices-per-side-conventional");
      assertThat(line.severity()).contains(Severity.MINOR);
      assertThat(line.steps()).anyMatch(step -> step.contains("united"));
    }

    @Test
    void leads_with_what_fits_how_it_failed() {
      Review review =
          review(
              CaseText.plated()
                  .at("/operations/0", "{reduction: {gapNearMm: 3}}")
                  .at(
                      "/operations/0/fixation/0",
                      "{screws: [{at: [1, 3, 8, 10], type: 'cortical'}]}")
                  .redone("screws-pulled-out-in-sequence"));

      assertThat(chapter(review, "op-1").fits().get(0).lead().principle())
          .isEqualTo("cortices-per-side-conventional");
    }
  }

  @Nested
  class What_to_find_out {

    @Test
    void is_ordered_by_how_much_an_answer_alone_would_settle() {
      Review review = review(CaseText.bare().redone("plate-bent"));

      List<Long> critical =
          review.questions().stream()
              .map(q -> q.settles().stream().filter(s -> s.worst() == Severity.CRITICAL).count())
              .toList();
      assertThat(critical).isSortedAccordingTo(Comparator.reverseOrder());
    }

    @Test
    void names_no_question_twice() {
      assertThat(review(CaseText.bare().redone("plate-bent")).questions())
          .doesNotHaveDuplicates()
          .isNotEmpty();
    }

    @Test
    void is_empty_where_everything_is_known() {
      CaseText text =
          CaseText.plated()
              .at(
                  "/operations/0/compression",
                  "{screws: 2, prebent: 'yes', prebendMm: 1.5, gapBeforeMm: 1}")
              .at("/operations/0/fixation/0", "{place: {firstHoleMm: 108}}")
              .at(
                  "/operations/0",
                  """
                  {outcome: {result: 'united', day: 200}, approach: 'anterolateral', resection: [],
                    strippedPercent: 25, reduction: {rotationDeg: 0, shorteningMm: 0}}
                  """)
              .with(
                  """
                  {findings: [{day: 200, nerve: {name: 'peroneal', function: 'intact'}, diagnosis: 'united', pain: 0, motionAtSite: 'absent',
                    films: [{view: 'ap-lateral', callus: 'none', line: 'gone', cortices: [3, 3, 3, 3], lucentScrews: []}]}]}
                  """);
      assertThat(review(text).questions()).isEmpty();
    }
  }

  @Test
  void the_table_has_a_row_for_each_principle_and_a_column_for_each_operation_and_plan() {
    PrincipleTable table = review(replated()).table();

    assertThat(table.columns()).containsExactly("op-1", "plan-a");
    assertThat(table.rows())
        .hasSize(RuleSet.built().cards().size())
        .allMatch(row -> row.cells().size() == 2);
  }

  @Test
  void nothing_unknown_is_ever_shown_as_met() {
    Review review = review(CaseText.bare().redone("plate-bent"));

    assertThat(review.chapters())
        .flatExtracting(Chapter::met)
        .extracting(Line::principle)
        .doesNotContain(
            "plate-span-ratio", "cortices-per-side-conventional", "absolute-needs-reduction");
  }

  @Test
  void the_same_case_gives_the_same_review() {
    assertThat(review(replated())).isEqualTo(review(replated()));
  }
}
