package org.bonewright.measures.healing;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiagnosisTest {

  private static final String LABEL = "union-label-now";

  private static String label(String findings, String outcome) {
    return Taken.of(LABEL, Found.since(findings).at("/operations/0", "{outcome: " + outcome + "}"));
  }

  @Test
  void the_last_word_counts() {
    String both = "{day: 50, diagnosis: 'delayed-union'}, {day: 90, diagnosis: 'united'}";
    assertThat(label(both, "{result: 'unknown'}")).isEqualTo("united fact");
    assertThat(label("{day: 50, diagnosis: 'delayed-union'}", "{result: 'united'}"))
        .isEqualTo("delayed-union fact");
  }

  @Test
  void what_was_said_before_the_operation_does_not() {
    assertThat(label("{day: 1, diagnosis: 'nonunion'}", "{result: 'united'}"))
        .isEqualTo("united fact");
  }

  @Test
  void an_operation_under_way_of_which_nothing_was_found_has_no_word_yet() {
    assertThat(label("", "{result: 'under-way'}")).isEqualTo("none: nothing was found since");
    assertThat(label("{day: 50}", "{result: 'under-way'}"))
        .isEqualTo("unknown, ask findings after op-1/diagnosis");
    assertThat(label("", "{result: 'failed'}"))
        .isEqualTo("unknown, ask findings after op-1/diagnosis");
  }

  @Test
  void after_what_is_still_planned_there_is_nothing() {
    assertThat(Taken.of("union-label-after", Found.planned("deformity", "{day: 90}"), "plan-a"))
        .isEqualTo("none: still to be done");
  }

  @Test
  void a_word_belongs_to_the_operation_that_it_followed() {
    CaseText text =
        Found.since("{day: 90, diagnosis: 'nonunion'}, {day: 300, diagnosis: 'united'}")
            .with("{operations: [{id: 'op-1', day: 2}, {id: 'op-2', day: 100}]}");
    assertThat(Taken.of("union-label-after", text, "op-1")).isEqualTo("nonunion fact");
    assertThat(Taken.of("union-label-after", text, "op-2")).isEqualTo("united fact");
    assertThat(Taken.of("union-label-without-operation", text, "op-2"))
        .isEqualTo("unknown, ask findings/diagnosis");
  }

  @ParameterizedTest
  @CsvSource({
    "vitality: 'atrophic', stated record",
    "vitality: 'uncertain', uncertain record",
    "pain: 2, not-stated record"
  })
  void the_kind_of_nonunion_is_on_file_or_not(String found, String expected) {
    assertThat(Taken.of("vitality-stated", Found.since("{day: 90, " + found + "}")))
        .isEqualTo(expected);
  }

  @Test
  void an_uncertain_kind_may_be_any() {
    CaseText text =
        Found.planned("deformity", "{day: 90, diagnosis: 'nonunion', vitality: 'uncertain'}");
    assertThat(Taken.of("nonunion-type", text)).isEqualTo("unknown, ask findings/vitality");
  }

  @Test
  void motion_pain_and_defect_are_as_last_told() {
    String twice =
        "{day: 50, motionAtSite: 'present', pain: 6, defectMm: 12},"
            + " {day: 90, motionAtSite: 'absent', pain: {min: 1, max: 2}},"
            + " {day: 95, motionAtSite: 'not-done'}";
    assertThat(Taken.of("motion-felt-now", Found.since(twice))).isEqualTo("no fact");
    assertThat(Taken.of("pain-now", Found.since(twice)))
        .isEqualTo("1–2 fact, ask findings after op-1/pain");
    assertThat(Taken.of("defect-found", Found.since(twice))).isEqualTo("12 fact");
    assertThat(Taken.of("motion-felt-after", Found.since("{day: 95, motionAtSite: 'not-done'}")))
        .isEqualTo("unknown, ask findings after op-1/motionAtSite");
  }
}
