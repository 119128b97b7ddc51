package org.bonewright.measures.limb;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A humerus plated on day 2 and failed by day 200; the plan does the same once more. */
class NerveMeasuresTest {

  private static final CaseText DONE = CaseText.plated().at("/bone", "{name: 'humerus'}");
  private static final CaseText PLANNED = DONE.redone("plate-bent");

  private static String radial(String function) {
    return "{name: 'radial', function: '" + function + "'}";
  }

  /** Return the case with the radial nerve as the injury left it and as found; "-" is not told. */
  private static CaseText nerve(CaseText text, String injury, int day, String found) {
    CaseText told =
        injury.equals("-") ? text : text.at("/injury", "{nerve: " + radial(injury) + "}");
    String finding = found.equals("-") ? "" : ", nerve: " + radial(found);
    return told.at("", "{findings: [{day: " + day + finding + "}]}");
  }

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          nerve-seen         | {seen: 'yes'}            | yes fact
          nerve-seen         | {seen: 'no'}             | no fact
          nerve-seen         | {seen: 'unknown'}        | unknown, ask op-1/nerve/seen
          nerve-seen         | {}                       | unknown, ask op-1/nerve/seen
          nerve-holes-noted  | {holesCrossed: [3]}      | yes fact
          nerve-holes-noted  | {holesCrossed: []}       | yes fact
          nerve-holes-noted  | {}                       | unknown, ask op-1/nerve/holesCrossed
          radial-nerve-after | {examinedAfter: 'yes'}   | yes fact
          radial-nerve-after | {examinedAfter: 'no'}    | no fact
          radial-nerve-after | {examinedAfter: 'unknown'} | unknown, ask op-1/nerve/examinedAfter
          radial-nerve-after | {}                       | unknown, ask op-1/nerve/examinedAfter
          """)
  void read_how_the_nerve_was_handled(String measure, String handled, String reads) {
    CaseText text = DONE.at("/operations/0", "{nerve: {}}").at("/operations/0/nerve", handled);
    assertThat(Taken.of(measure, text)).isEqualTo(reads);
  }

  @ParameterizedTest
  @CsvSource({"nerve-seen", "nerve-holes-noted", "radial-nerve-after", "radial-nerve-before"})
  void take_what_a_plan_does_not_name_for_not_planned(String measure) {
    assertThat(Taken.of(measure, PLANNED)).isEqualTo("no fact");
  }

  @Test
  void ask_for_no_holes_where_no_plate_is_put_in() {
    assertThat(Taken.of("nerve-holes-noted", CaseText.nailed()))
        .isEqualTo("none: no plate is put in");
  }

  @ParameterizedTest(name = "injury {0}, on day {1} {2}: {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          intact       | 9 | -             | yes fact
          -            | 1 | complete-palsy | yes fact
          not-examined | 9 | -             | no fact
          -            | 1 | not-examined  | no fact
          -            | 9 | intact        | unknown, ask op-1/nerve
          """)
  void know_what_was_written_before_a_first_operation(
      String injury, int day, String found, String reads) {
    assertThat(Taken.of("radial-nerve-before", nerve(DONE, injury, day, found))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "injury {0}, on day {1} {2}: {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          intact | 1   | intact | no fact
          intact | 190 | intact | yes fact
          """)
  void do_not_take_an_old_examination_for_one_before_a_later_operation(
      String injury, int day, String found, String reads) {
    assertThat(Taken.of("radial-nerve-before", nerve(PLANNED, injury, day, found)))
        .isEqualTo(reads);
  }

  @ParameterizedTest(name = "found on day {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2 | unknown, ask op-1/nerve/examinedAfter
          3 | yes fact
          4 | unknown, ask op-1/nerve/examinedAfter
          """)
  void count_an_examination_of_the_day_after(int day, String reads) {
    assertThat(Taken.of("radial-nerve-after", nerve(DONE, "-", day, "partial"))).isEqualTo(reads);
  }

  @Test
  void are_about_the_humerus_and_the_radial_nerve() {
    CaseText median =
        DONE.at("", "{findings: [{day: 3, nerve: {name: 'median', function: 'intact'}}]}");

    assertThat(Taken.of("radial-nerve-before", CaseText.plated()))
        .isEqualTo("none: not the humerus");
    assertThat(Taken.of("radial-nerve-after", CaseText.plated()))
        .isEqualTo("none: not the humerus");
    assertThat(Taken.of("radial-nerve-after", median)).startsWith("unknown");
  }

  @ParameterizedTest(name = "injury {0}, then {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          intact         | intact         | none fact
          complete-palsy | intact         | none fact
          complete-palsy | recovering     | recovering fact
          complete-palsy | partial        | old fact
          recovering     | complete-palsy | old fact
          intact         | complete-palsy | new fact
          intact         | partial        | new fact
          -              | complete-palsy | new or old fact, ask injury/nerve
          not-examined   | complete-palsy | new or old fact, ask injury/nerve
          # since the operation nobody has looked
          complete-palsy | -              | unknown, ask findings/nerve
          intact         | -              | unknown, ask findings/nerve
          intact         | not-examined   | unknown, ask findings/nerve
          """)
  void tell_a_new_palsy_from_an_old_one(String injury, String found, String reads) {
    assertThat(Taken.of("nerve-palsy", nerve(PLANNED, injury, 190, found))).isEqualTo(reads);
  }

  @Test
  void keep_a_palsy_in_mind_when_another_nerve_was_examined_last() {
    CaseText text =
        PLANNED
            .at("/injury", "{nerve: " + radial("intact") + "}")
            .at(
                "",
                "{findings: [{day: 10, nerve: "
                    + radial("complete-palsy")
                    + "}, {day: 190, nerve: {name: 'ulnar', function: 'intact'}}]}");
    assertThat(Taken.of("nerve-palsy", text)).isEqualTo("new fact");
  }

  @Test
  void count_the_nerve_that_works_worst_as_last_found_whatever_the_order_of_the_findings() {
    CaseText text =
        PLANNED
            .at("/injury", "{nerve: " + radial("intact") + "}")
            .at(
                "",
                "{findings: [{day: 190, nerve: "
                    + radial("recovering")
                    + "}, {day: 10, nerve: "
                    + radial("complete-palsy")
                    + "}, {day: 180, nerve: {name: 'ulnar', function: 'intact'}}]}");
    assertThat(Taken.of("nerve-palsy", text)).isEqualTo("recovering fact");
  }

  @Test
  void take_the_palsy_of_an_injury_never_operated_on_for_an_old_one() {
    CaseText text =
        DONE.at("/injury", "{nerve: " + radial("complete-palsy") + "}")
            .at("", "{operations: [], plans: [{id: 'plan-a', stages: [{id: 'stage-1'}]}]}");
    assertThat(Taken.of("nerve-palsy", text)).isEqualTo("old fact");
  }

  @ParameterizedTest(name = "{0}, followed {1}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          partial    | {}                                                                  | 3 fact
          partial    | {examinedWeeks: [4, 8]}                                             | 2 fact
          partial    | {examinedWeeks: [], electricalTestWeek: 4}                          | 2 fact
          partial    | {examinedWeeks: [4, 8], electricalTestWeek: 4, exploredByWeek: 20}  | 0 fact
          recovering | {electricalTestWeek: 4}                                             | 1 fact
          recovering | {examinedWeeks: [4, 8]}                                             | 0 fact
          intact     | {}                                                                  | none: no palsy
          # of a palsy nobody has looked for, at least the examinations, at most all
          -          | {}                                                   | 1–3 fact, ask plan-a/stage-1/aftercare/nerveFollowUp
          -          | {examinedWeeks: [4]}                                 | 0–2 fact, ask plan-a/stage-1/aftercare/nerveFollowUp
          """)
  void count_the_parts_of_the_follow_up_without_a_date(
      String found, String followed, String reads) {
    CaseText text =
        nerve(PLANNED, "complete-palsy", 190, found)
            .at("/plans/0/stages/0/aftercare", "{nerveFollowUp: {}}")
            .at("/plans/0/stages/0/aftercare/nerveFollowUp", followed);
    assertThat(Taken.of("nerve-follow-up-missing", text)).isEqualTo(reads);
  }

  @Test
  void take_no_follow_up_unsaid_for_none_in_the_past() {
    CaseText text = nerve(DONE, "complete-palsy", 9, "partial");
    assertThat(Taken.of("nerve-follow-up-missing", text))
        .isEqualTo("0–3 fact, ask op-1/aftercare/nerveFollowUp");
  }
}
