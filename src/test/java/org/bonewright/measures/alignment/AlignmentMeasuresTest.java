package org.bonewright.measures.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tibia of the test case is left in 5 degrees of valgus and bent back by 3, a step of 1 mm. */
class AlignmentMeasuresTest {

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          coronal-deviation  | {}                                  | 5 fact
          coronal-deviation  | {coronalDeg: -8}                    | 8 fact
          coronal-deviation  | {coronalDeg: {min: -4, max: 2}}     | 0–4 fact, ask op-1/reduction/coronalDeg
          sagittal-deviation | {}                                  | 3 fact
          rotation-deviation | {rotationDeg: -12}                  | 12 fact
          rotation-deviation | {}                                  | unknown, ask op-1/reduction/rotationDeg
          rotation-deviation | {coronalDeg: null, sagittalDeg: null} | unknown, ask op-1/reduction/coronalDeg
          in-varus           | {}                                  | no fact
          in-varus           | {coronalDeg: 0}                     | no fact
          in-varus           | {coronalDeg: -1}                    | yes fact
          in-varus           | {coronalDeg: {min: -2, max: 1}}     | no or yes fact, ask op-1/reduction/coronalDeg
          in-varus           | {coronalDeg: null}                  | unknown, ask op-1/reduction/coronalDeg
          angulation-worst   | {}                                  | 5 fact
          angulation-worst   | {sagittalDeg: -9}                   | 9 fact
          # 0 to 10 on one view, 3 on the other
          angulation-worst   | {coronalDeg: {min: -10, max: 2}}    | 3–10 fact, ask op-1/reduction/coronalDeg
          angulation-worst   | {coronalDeg: null}                  | 3–90 fact, ask op-1/reduction/coronalDeg
          angulation-worst   | {coronalDeg: null, sagittalDeg: null} | unknown, ask op-1/reduction/coronalDeg
          # 1 and 12 of 24 mm
          step-share         | {}                                  | 4.167 fact
          step-share         | {translationMm: 12}                 | 50 fact
          step-share         | {translationMm: {min: 6, max: 12}}  | 25–50 fact, ask op-1/reduction/translationMm
          step-share         | {translationMm: null}               | unknown, ask op-1/reduction/translationMm
          """)
  void tell_how_the_bone_stands_at_the_end(String measure, String reduction, String reads) {
    CaseText text = CaseText.plated().at("/operations/0/reduction", reduction);
    assertThat(Taken.of(measure, text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}: {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          line-opened        | {approach: 'medial'}  | yes fact
          line-opened        | {approach: 'closed'}  | no fact
          line-opened        | {}                    | unknown, ask op-1/approach
          bone-held-to-unite | {}                    | tibia fact
          bone-held-to-unite | {fixation: []}        | none fact
          # one field, asked for what holds the bone and for what was meant
          bone-held-to-unite | {fixation: null}      | none or tibia fact, ask op-1/fixation and op-1/fixation
          length-lost        | {resection: [], reduction: {shorteningMm: 12}}  | 12 fact
          length-lost        | {resection: [], reduction: {shorteningMm: -5}}  | -5 fact
          length-lost        | {reduction: {shorteningMm: 12}}                 | 0–12 fact, ask op-1/resection
          # 10 mm cut out, a gap of 1 mm left
          length-lost        | {resection: [{fromMm: 175, toMm: 185}], reduction: {shorteningMm: 10}} | none: shortened on purpose
          # 12 of 360 mm; a bone that is too long has lost nothing
          length-lost-share  | {resection: [], reduction: {shorteningMm: 12}}  | 3.333 fact
          length-lost-share  | {resection: [], reduction: {shorteningMm: -5}}  | 0 fact
          length-lost-share  | {resection: [], reduction: {shorteningMm: {min: 9, max: 18}}} | 2.5–5 fact, ask op-1/reduction/shorteningMm
          """)
  void tell_what_the_operation_did(String measure, String operation, String reads) {
    CaseText text = CaseText.plated().at("/operations/0", operation);
    assertThat(Taken.of(measure, text)).isEqualTo(reads);
  }

  @Test
  void take_the_share_of_a_bone_whose_length_is_a_range() {
    CaseText text =
        CaseText.plated()
            .at("/bone", "{lengthMm: {min: 300, max: 400}}")
            .at("/operations/0", "{resection: [], reduction: {shorteningMm: 12}}");
    assertThat(Taken.of("length-lost-share", text)).isEqualTo("3–4 fact, ask bone/lengthMm");
  }

  @ParameterizedTest(name = "{0}, found {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          clavicle | pain: 4                                                | yes fact
          clavicle | pain: 2, joints: [{joint: 'shoulder', percent: 79}]    | yes fact
          clavicle | pain: 2, joints: [{joint: 'shoulder', percent: 80}]    | no fact
          clavicle | pain: {min: 3, max: 5}, joints: [{joint: 'shoulder', percent: 80}] | no or yes fact, ask findings/pain
          clavicle | pain: 2                                                | no or yes fact, ask findings/joints
          clavicle | skin: 'intact'                                         | no or yes fact, ask findings/pain
          tibia    | pain: 9                                                | none: not the clavicle
          """)
  void know_a_shoulder_in_trouble(String bone, String found, String reads) {
    CaseText text =
        CaseText.plated()
            .at("/bone", "{name: '" + bone + "'}")
            .at("", "{findings: [{day: 1, " + found + "}]}");
    assertThat(Taken.of("shoulder-complaint", text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0}, fixed {1} reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {pattern: 'transverse'}                   | {resection: []} | none: transverse
          {pattern: 'oblique', obliquityDeg: 60}    | {resection: []} | 60 fact
          {pattern: 'spiral'}                       | {resection: []} | 30–90 fact, ask injury/obliquityDeg
          {pattern: 'oblique', obliquityDeg: 60}    | {resection: [{fromMm: 170, toMm: 190}]} | none: the line is cut out
          # in the past nothing said on cutting is not nothing cut
          {pattern: 'oblique', obliquityDeg: 60}    | {}              | 0–60 fact, ask op-1/fixation
          {pattern: 'oblique'}                      | {}              | 0–90 fact, ask op-1/fixation and injury/obliquityDeg
          {pattern: null}                           | {resection: []} | unknown, ask injury/pattern
          """)
  void tell_how_steep_a_line_is_that_may_slide(String injury, String operation, String reads) {
    CaseText text = CaseText.plated().at("/injury", injury).at("/operations/0", operation);
    assertThat(Taken.of("steep-line-free", text)).isEqualTo(reads);
  }

  @Test
  void leave_a_steep_line_alone_that_a_nail_or_lag_screw_holds() {
    String steep = "{pattern: 'oblique', obliquityDeg: 60}";
    CaseText lagged =
        CaseText.plated()
            .at("/operations/0", "{fixation: [{id: 'lag-1', kind: 'lag-screw'}], resection: []}");

    assertThat(Taken.of("steep-line-free", CaseText.nailed().at("/injury", steep)))
        .isEqualTo("none: a lag screw, nail or second plate holds it");
    assertThat(Taken.of("steep-line-free", lagged.at("/injury", steep)))
        .isEqualTo("none: a lag screw, nail or second plate holds it");
  }

  @Test
  void do_not_take_the_angle_of_the_injury_for_another_line_found_later() {
    CaseText text =
        CaseText.plated()
            .at("/injury", "{pattern: 'oblique', obliquityDeg: 60}")
            .at("/operations/0", "{resection: []}")
            .at("", "{findings: [{day: 1, pattern: 'spiral'}]}");
    assertThat(Taken.of("steep-line-free", text)).isEqualTo("30–90 fact, ask injury/obliquityDeg");
  }
}
