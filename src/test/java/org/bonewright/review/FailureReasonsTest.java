package org.bonewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.principles.RuleSet;
import org.junit.jupiter.api.Test;

/** What explains a failure, in which order, and what is merely there as well. */
class FailureReasonsTest {

  private static final Reviewer REVIEWER = new Reviewer(RuleSet.built());

  /** A plate on two screws a side over a gap: hold and gap are at fault. */
  private static CaseText faulty() {
    return CaseText.plated()
        .at("/operations/0", "{reduction: {gapNearMm: 3, gapFarMm: 3}}")
        .at("/operations/0/fixation/0", "{screws: [{at: [1, 3, 8, 10], type: 'cortical'}]}");
  }

  private static Chapter first(CaseText text) {
    return REVIEWER.review(text.file()).chapters().get(0);
  }

  private static List<String> causes(List<Headline> headlines) {
    return headlines.stream().map(Headline::cause).toList();
  }

  @Test
  void what_stands_in_the_row_of_the_mode_fits_and_the_rest_does_not_explain_it() {
    Chapter pulledOut = first(faulty().redone("screws-pulled-out-in-sequence"));
    assertThat(pulledOut.fits().get(0).cause()).isEqualTo("hold");
    assertThat(pulledOut.fits().get(0).placedBy()).isEqualTo("failure mode");
    assertThat(causes(pulledOut.others())).contains("gap");

    Chapter broken = first(faulty().redone("plate-broken-at-empty-hole"));
    assertThat(causes(broken.fits())).contains("gap").doesNotContain("hold");
    assertThat(causes(broken.others())).contains("hold");
  }

  @Test
  void where_one_of_two_modes_is_told_what_stands_in_either_row_fits() {
    Chapter broken = first(faulty().redone("plate-broken"));
    assertThat(causes(broken.fits())).contains("gap").doesNotContain("hold");
    assertThat(broken.fits().get(0).placedBy()).isEqualTo("failure mode");
  }

  @Test
  void load_limits_that_were_not_kept_are_told_beside_a_failure_and_beside_nothing_else() {
    CaseText ignored = faulty().at("/operations/0", "{aftercare: {followed: 'no'}}");
    assertThat(first(ignored.redone("plate-bent")).outcome().orElseThrow())
        .endsWith("load limits were not kept");
    assertThat(
            first(ignored.at("/operations/0", "{outcome: {result: 'united'}}"))
                .outcome()
                .orElseThrow())
        .doesNotContain("load limits");
  }

  @Test
  void without_a_mode_nothing_fits_and_the_order_is_by_time_then_severity() {
    Chapter unread = first(faulty().at("/operations/0", "{outcome: {result: 'failed', day: 15}}"));
    assertThat(unread.fits()).isEmpty();
    assertThat(unread.others()).extracting(Headline::placedBy).doesNotContain("failure mode");
    assertThat(unread.others().get(0).cause()).isIn("hold", "length", "implant", "open-holes");
  }

  @Test
  void of_an_operation_that_did_not_fail_neither_mode_nor_time_places_anything() {
    Chapter united = first(faulty().at("/operations/0", "{outcome: {result: 'united', day: 200}}"));
    assertThat(united.fits()).isEmpty();
    assertThat(united.unexplained()).isFalse();
    assertThat(united.others())
        .extracting(Headline::placedBy)
        .isSubsetOf("severity", "shortfall", "name");
  }

  @Test
  void each_headline_says_what_placed_it_and_the_order_is_the_same_each_time() {
    Chapter one = first(faulty().redone("screws-pulled-out-in-sequence"));
    Chapter two = first(faulty().redone("screws-pulled-out-in-sequence"));
    assertThat(one).isEqualTo(two);
    assertThat(one.fits()).allSatisfy(h -> assertThat(h.placedBy()).isNotBlank());
    assertThat(one.others()).allSatisfy(h -> assertThat(h.placedBy()).isNotBlank());
  }

  @Test
  void a_failure_with_a_grave_technical_fault_is_not_called_unexplained() {
    assertThat(first(faulty().redone("screws-pulled-out-in-sequence")).unexplained()).isFalse();
  }

  @Test
  void a_failure_without_one_is() {
    assertThat(first(CaseText.plated().redone("no-union-metal-intact")).unexplained()).isTrue();
  }

  @Test
  void a_failure_without_one_names_what_the_file_said_of_the_host_before_it() {
    String host = "{smoking: 'current', diabetes: 'yes', hba1cPercent: 8.7, drugs: ['nsaid']}";
    CaseText before =
        CaseText.plated()
            .redone("no-union-metal-intact")
            .with("{findings: [{day: 1, host: " + host + "}]}");
    CaseText after =
        CaseText.plated()
            .redone("no-union-metal-intact")
            .with("{findings: [{day: 150, host: " + host + "}]}");
    assertThat(first(before).hostBefore())
        .containsExactly(
            "smoking", "diabetes with a long-term blood sugar of 8.7 %", "anti-inflammatory drug");
    assertThat(first(before).lookAgain()).startsWith("On file before it: smoking, diabetes");
    assertThat(first(after).hostBefore()).isEmpty();
    assertThat(first(after).lookAgain()).startsWith("Look again for infection, host and load");
  }
}
