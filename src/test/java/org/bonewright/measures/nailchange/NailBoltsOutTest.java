package org.bonewright.measures.nailchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bolts taken out of a nail that stays: put in on day 2 across a transverse line at 180 of 360 mm,
 * bolts 1 and 2 near, 3 and 4 far; little callus on day 114, sixteen weeks later.
 */
class NailBoltsOutTest {

  private static final String MISSED = "dynamisation-conditions-missed";

  private static CaseText boltsOut(String bolts) {
    return CaseText.nailed()
        .at(
            "/operations/0",
            "{reduction: {gapNearMm: 1, gapFarMm: 2, contactPercent: 90}, compression: {method:"
                + " 'none'}}")
        .redone("bolt-broken")
        .with("{findings: [" + seen(114, "little") + "]}")
        .without("/plans/0/stages/0/reduction")
        .without("/plans/0/stages/0/compression")
        .at(
            "/plans/0/stages/0",
            "{fixation: [], biology: [], removed: [{of: 'op-1/nail-1', bolts: " + bolts + "}]}");
  }

  private static String seen(int day, String callus) {
    return "{day: %d, diagnosis: 'nonunion', films: [{view: 'ap', callus: '%s'}]}"
        .formatted(day, callus);
  }

  @ParameterizedTest(name = "line at {0}, bolts {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # beyond the middle of 180 the near fragment is the longer one
          fromMm: 199, toMm: 201 | [1, 2] | 0 fact
          fromMm: 199, toMm: 201 | [3]    | 1 fact
          fromMm: 199, toMm: 201 | [4]    | 1 fact
          fromMm: 159, toMm: 161 | [4]    | 0 fact
          fromMm: 159, toMm: 161 | [1]    | 1 fact
          fromMm: 159, toMm: 161 | [2, 3] | 1 fact
          """)
  void only_those_of_the_longer_fragment_can_be_spared(String zone, String bolts, String reads) {
    CaseText text = boltsOut(bolts).at("/injury", "{zone: {" + zone + "}}");
    assertThat(Taken.of(MISSED, text)).isEqualTo(reads);
  }

  @Test
  void which_fragment_is_the_longer_is_asked_for_where_the_line_lies_about_the_middle() {
    CaseText text =
        boltsOut("[3]")
            .at("/injury", "{zone: {fromMm: {min: 169, max: 189}, toMm: {min: 171, max: 191}}}");
    assertThat(Taken.of(MISSED, text)).isEqualTo("0–1 fact, ask injury/zone");
  }

  @Test
  void which_end_they_hold_is_asked_for_where_no_bolt_is_listed() {
    CaseText text = boltsOut("[1]").at("/operations/0/fixation/0", "{bolts: null}");
    assertThat(Taken.of(MISSED, text)).isEqualTo("0–1 fact, ask op-1/fixation/bolts");
  }

  @ParameterizedTest(name = "on day {0}: {1}")
  @CsvSource({"71, 1 fact", "72, 0 fact", "170, 0 fact", "171, 1 fact"})
  void ten_to_twenty_four_weeks_after_nailing_are_the_time_for_it(int day, String reads) {
    CaseText text = boltsOut("[3]").with("{findings: [" + seen(day, "little") + "]}");
    assertThat(Taken.of(MISSED, text)).isEqualTo(reads);
  }

  @Test
  void without_callus_a_condition_is_missed_and_all_that_are_missed_are_named() {
    CaseText none = boltsOut("[3]").with("{findings: [" + seen(114, "none") + "]}");
    assertThat(Taken.of(MISSED, none)).isEqualTo("1 fact");
    assertThat(working(none)).isEqualTo("no callus");
    assertThat(working(boltsOut("[3]"))).isEqualTo("none for certain");
    assertThat(working(none.at("/injury", "{pattern: 'spiral'}")))
        .isEqualTo("no callus, the line can shorten or spin");
  }

  private static String working(CaseText text) {
    return Taken.reading(MISSED, Taken.subject(text.file(), "plan-a")).working();
  }

  @Test
  void a_nail_that_no_operation_tells_is_asked_for() {
    CaseText text = boltsOut("[3]").at("/operations/0", "{fixation: null}");
    assertThat(Taken.of(MISSED, text)).isEqualTo("unknown, ask op-1/fixation");
    // bolts of an implant of another operation do not make this one's a nail
    CaseText other = text.at("/plans/0/stages/0", "{removed: [{of: 'op-0/nail-1', bolts: [3]}]}");
    assertThat(Taken.of(MISSED, other)).isEqualTo("none: no bolt taken out of a nail that stays");
    // and a nail taken out whole is not dynamised
    CaseText whole = text.at("/plans/0/stages/0", "{removed: [{of: 'op-1/nail-1'}]}");
    assertThat(Taken.of(MISSED, whole)).isEqualTo("none: no bolt taken out of a nail that stays");
  }

  @Test
  void whether_the_bone_has_united_by_then_is_asked_for() {
    CaseText text = boltsOut("[3]").at("/operations/0", "{outcome: null}").with("{findings: []}");
    assertThat(Taken.of(MISSED, text)).startsWith("unknown, ask ");
    assertThat(Taken.of("nail-revision", text)).startsWith("kept or no-nail fact, ask ");
  }

  @Test
  void an_operation_of_the_past_that_does_not_tell_its_metal_may_have_done_anything_to_the_nail() {
    CaseText text =
        CaseText.of(
            boltsOut("[3]")
                .toString()
                .replace("],\"plans\"", ",{\"id\":\"op-2\",\"day\":230}],\"plans\""));
    assertThat(Taken.of("nail-revision", text, "op-2"))
        .isEqualTo("exchanged or kept or plate-over or taken-out fact, ask op-2/fixation");
  }
}
