package org.bonewright.measures.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Operation on day 2 left 5 degrees of valgus; the plan does the same once more. */
class PlannedAlignmentTest {

  private static CaseText planned(String finding, String stage) {
    return CaseText.plated()
        .redone("plate-bent")
        .at("", "{findings: [" + finding + "]}")
        .at("/plans/0/stages/0", stage);
  }

  @ParameterizedTest(name = "{0}, found {1}, planned {2} reads {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          coronal-kept  |                                           | {}                          | 5 fact
          coronal-kept  |                                           | {reduction: {coronalDeg: 0}}  | 0 fact
          # a new deformity is no kept one
          coronal-kept  |                                           | {reduction: {coronalDeg: 20}} | 5 fact
          coronal-kept  | {day: 190, deformity: {coronalDeg: -14}}  | {}                          | 5 fact
          coronal-kept  | {day: 190, deformity: {coronalDeg: -14}}  | {reduction: {coronalDeg: -12}} | 12 fact
          coronal-kept  | {day: 1, deformity: {coronalDeg: -14}}    | {reduction: {coronalDeg: -12}} | 5 fact
          coronal-kept  | {day: 190, deformity: {coronalDeg: {min: 8, max: 12}}} | {reduction: {coronalDeg: 10}} | 8–10 fact, ask findings/deformity/coronalDeg
          coronal-kept  |                                           | {reduction: {coronalDeg: null}} | 0–5 fact, ask plan-a/stage-1/reduction/coronalDeg
          # nothing sets the bone, and all of it stays
          coronal-kept  | {day: 190, deformity: {coronalDeg: -14}}  | {reduction: null, fixation: []} | 14 fact
          sagittal-kept |                                           | {}                          | 3 fact
          rotation-kept | {day: 190, deformity: {rotationDeg: 20}}  | {reduction: {rotationDeg: 18}} | 18 fact
          rotation-kept |                                           | {}                          | unknown, ask findings/deformity/coronalDeg and plan-a/stage-1/reduction/rotationDeg
          """)
  void tell_how_much_of_an_old_deformity_stays(
      String measure, String found, String stage, String reads) {
    assertThat(Taken.of(measure, planned(found == null ? "" : found, stage))).isEqualTo(reads);
  }

  @ParameterizedTest(name = "found {0}, aftercare {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          joints: [{joint: 'knee', percent: 40}, {joint: 'ankle', percent: 80}] | {} | 40 fact
          joints: [{joint: 'knee', percent: {min: 40, max: 60}}, {joint: 'ankle', percent: 50}] | {} | 40–50 fact, ask findings/joints
          joints: [] | {}                             | unknown, ask findings/joints
          # load alone, or motion alone, protects nothing
          joints: [{joint: 'knee', percent: 40}] | {motionFromDay: 1, load: []} | 40 fact
          joints: [{joint: 'knee', percent: 40}] | {motionFromDay: 1}           | none: load and motion are settled
          """)
  void tell_how_little_an_unprotected_joint_moves(String found, String aftercare, String reads) {
    CaseText text =
        planned("{day: 190, " + found + "}", "{}").at("/plans/0/stages/0/aftercare", aftercare);
    assertThat(Taken.of("stiff-joint-motion", text)).isEqualTo(reads);
  }

  @Test
  void do_not_judge_a_stiff_joint_in_the_past() {
    CaseText text =
        CaseText.plated().at("", "{findings: [{day: 1, joints: [{joint: 'knee', percent: 40}]}]}");
    assertThat(Taken.of("stiff-joint-motion", text)).isEqualTo("none: judged in a plan only");
  }
}
