package org.bonewright.casefile.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.casefile.checking.MinimumSet.Missing;
import org.junit.jupiter.api.Test;

/** What is asked for, by the pointer of the answer. */
class MinimumSetTest {

  private static final String OP = "/operations/0";

  private static List<String> asked(CaseText text) {
    return new MinimumSet(text.file()).missing().stream().map(Missing::pointer).toList();
  }

  private static List<String> asked(String operation) {
    return asked(CaseText.bare().at(OP, operation));
  }

  @Test
  void of_a_bare_case_everything_is_in_the_order_of_the_file() {
    assertThat(asked(CaseText.bare()))
        .containsExactly(
            "/patient/ageYears",
            "/injury/pattern",
            "/operations/0/day",
            "/operations/0/fixation",
            "/operations/0/reduction/gapNearMm",
            "/operations/0/outcome",
            "/findings/0/diagnosis",
            "/findings/0/films/0/callus",
            "/findings/0/infection/sinus",
            "/findings/0/infection/pus",
            "/findings/0/infection/localSigns",
            "/findings/0/infection/crpMgL");
  }

  @Test
  void nothing_is_asked_that_is_told() {
    String finding =
        "{day: 250, diagnosis: 'nonunion', films: [{view: 'ap', callus: 'none'}],"
            + " infection: {sinus: 'absent', pus: 'absent', localSigns: 'absent', crpMgL: 4}}";
    CaseText told =
        CaseText.plated()
            .at(OP, "{outcome: {result: 'failed', day: 200, mode: 'plate-bent'}}")
            .with("{findings: [" + finding + "]}");
    assertThat(asked(told)).isEmpty();
    // what an earlier finding said is asked again of the last one
    assertThat(asked(told.with("{findings: [" + finding + ", {day: 300}]}")))
        .containsExactly(
            "/findings/1/diagnosis",
            "/findings/1/films/0/callus",
            "/findings/1/infection/sinus",
            "/findings/1/infection/pus",
            "/findings/1/infection/localSigns",
            "/findings/1/infection/crpMgL");
  }

  @Test
  void plates_and_nails_are_asked_for_what_they_are() {
    assertThat(
            asked(
                "{fixation: [{id: 'p', kind: 'plate'}, {id: 'n', kind: 'nail'},"
                    + " {id: 'w', kind: 'cerclage'}]}"))
        .filteredOn(pointer -> pointer.contains("/fixation"))
        .containsExactly(
            OP + "/fixation/0/family",
            OP + "/fixation/0/holes",
            OP + "/fixation/0/place",
            OP + "/fixation/0/screws",
            OP + "/fixation/1/outerMm",
            OP + "/fixation/1/bolts");
  }

  @Test
  void no_gap_is_asked_for_where_nothing_was_put_in() {
    assertThat(asked("{fixation: []}")).doesNotContain(OP + "/reduction/gapNearMm");
    assertThat(asked("{fixation: [{id: 'w', kind: 'cerclage'}]}"))
        .contains(OP + "/reduction/gapNearMm");
  }

  @Test
  void a_failure_is_asked_for_its_mode_and_day() {
    assertThat(asked("{outcome: {result: 'failed'}}"))
        .contains(OP + "/outcome/mode", OP + "/outcome/day");
    assertThat(asked("{outcome: {result: 'failed', mode: 'plate-bent', weeksAfter: 20}}"))
        .doesNotContain(OP + "/outcome/mode", OP + "/outcome/day", OP + "/outcome");
    assertThat(asked("{outcome: {result: 'under-way'}}"))
        .doesNotContain(OP + "/outcome/mode", OP + "/outcome/day");
  }

  @Test
  void a_mode_that_leaves_two_open_is_asked_for_by_both() {
    MinimumSet set =
        new MinimumSet(
            CaseText.bare()
                .at(OP, "{outcome: {result: 'failed', day: 9, mode: 'plate-broken'}}")
                .file());
    assertThat(set.missing())
        .filteredOn(missing -> missing.pointer().equals(OP + "/outcome/mode"))
        .extracting(Missing::question)
        .containsExactly(
            "Which was it: plate-broken-at-empty-hole or plate-broken-at-filled-hole?");
    assertThat(set.missing()).isEqualTo(set.missing());
  }

  @Test
  void nothing_is_asked_of_today_once_the_bone_has_united_and_nothing_is_planned() {
    CaseText united = CaseText.bare().at(OP, "{outcome: {result: 'united'}}");
    assertThat(asked(united)).noneMatch(pointer -> pointer.startsWith("/findings"));
    assertThat(asked(united.with("{plans: [{id: 'a', stages: [{id: 'a-1'}]}]}")))
        .contains("/findings/0/diagnosis");
    assertThat(
            asked(
                united.with(
                    "{operations: [{id: 'op-1', outcome: {result: 'united'}}, {id: 'op-2'}]}")))
        .contains("/findings/0/diagnosis", "/operations/1/day");
  }
}
