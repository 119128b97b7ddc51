package org.bonewright.measures.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bone is operated on at day 2 and left with angles of 5 and 3 degrees. */
class ForearmMeasuresTest {

  private static CaseText forearm(String bone) {
    return CaseText.plated().at("/bone", "{name: '" + bone + "', lengthMm: 240}");
  }

  @ParameterizedTest(name = "radius beside {0} reads {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {state: 'intact', operations: []}    | 5 fact
          {state: 'united', operations: []}    | 5–90 fact, ask companion/operations/reduction
          {state: 'unknown', operations: []}   | 5–90 fact, ask companion/state
          {state: 'fixed', operations: [{id: 'u-1', day: 1, reduction: {coronalDeg: -12, sagittalDeg: 2}}]} | 12 fact
          {state: 'fixed', operations: [{id: 'u-1', day: 1, reduction: {coronalDeg: 1, sagittalDeg: 2}}]}   | 5 fact
          # what is done later was not known
          {state: 'fixed', operations: [{id: 'u-1', day: 9, reduction: {coronalDeg: -12, sagittalDeg: 2}}]} | 5–90 fact, ask companion/operations/reduction
          # a later operation that set it and does not tell leaves it open
          {state: 'fixed', operations: [{id: 'u-1', day: 1, reduction: {coronalDeg: -12, sagittalDeg: 2}}, {id: 'u-2', day: 2}]} | 5–90 fact, ask companion/operations/reduction
          """)
  void count_the_angles_of_the_other_bone_where_it_was_broken(String beside, String reads) {
    CaseText text =
        forearm("radius").at("", "{companion: {bone: 'ulna'}}").at("/companion", beside);
    assertThat(Taken.of("angulation-worst", text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} of {1}, fit {2} reads {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          bow-height-difference | radius | {bowHeightDifferenceMm: -3}      | 3 fact
          bow-height-difference | radius | {}                               | unknown, ask op-1/reduction/forearm/bowHeightDifferenceMm
          bow-height-difference | ulna   | {}                               | unknown, ask op-1/reduction/forearm/bowHeightDifferenceMm
          bow-height-difference | tibia  | {bowHeightDifferenceMm: -3}      | none: no forearm bone
          bow-place-difference  | radius | {bowPlaceDifferencePercent: -6}  | 6 fact
          bow-place-difference  | ulna   | {bowPlaceDifferencePercent: 4}   | 4 fact
          bow-place-difference  | radius | {bowPlaceDifferencePercent: {min: -1, max: 6}} | 0–6 fact, ask op-1/reduction/forearm/bowHeightDifferenceMm
          forearm-joints-sit    | radius | {wristJointSits: 'yes', radialHeadSits: 'yes'}     | yes fact
          forearm-joints-sit    | ulna   | {wristJointSits: 'yes', radialHeadSits: 'no'}      | no fact
          forearm-joints-sit    | radius | {wristJointSits: 'no'}                             | no fact
          forearm-joints-sit    | radius | {wristJointSits: 'yes'}                            | unknown, ask op-1/reduction/forearm/wristJointSits
          forearm-joints-sit    | radius | {wristJointSits: 'yes', radialHeadSits: 'unknown'} | unknown, ask op-1/reduction/forearm/wristJointSits
          forearm-joints-sit    | tibia  | {wristJointSits: 'no'}                             | none: no forearm bone
          ulnar-variance-difference | radius | {ulnarVarianceDifferenceMm: -3}                | 3 fact
          ulnar-variance-difference | tibia  | {}                                             | none: no forearm bone
          """)
  void read_how_the_two_bones_fit(String measure, String bone, String fit, String reads) {
    CaseText text =
        forearm(bone)
            .at("/operations/0/reduction", "{forearm: {}}")
            .at("/operations/0/reduction/forearm", fit);
    assertThat(Taken.of(measure, text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "an ulna beside a radius that is {0} reads {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          intact | none: the radius was never broken
          united | unknown, ask op-1/reduction/forearm/bowHeightDifferenceMm
          """)
  void ask_for_no_bow_of_a_radius_that_was_never_broken(String state, String reads) {
    CaseText text =
        forearm("ulna")
            .at("", "{companion: {bone: 'radius', state: '" + state + "', operations: []}}");
    assertThat(Taken.of("bow-height-difference", text)).isEqualTo(reads);
    assertThat(Taken.of("bow-place-difference", text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "{0} here, {1} there reads {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          4                | {state: 'intact', operations: []}   | 4 fact
          4                | {state: 'fixed', operations: [{id: 'u-1', day: 1, reduction: {shorteningMm: 3}}]} | 1 fact
          2                | {state: 'fixed', operations: [{id: 'u-1', day: 1, reduction: {shorteningMm: 5}}]} | 3 fact
          # from 1 less 2 to 4 less 2
          {min: 1, max: 4} | {state: 'fixed', operations: [{id: 'u-1', day: 1, reduction: {shorteningMm: 2}}]} | 0–2 fact, ask op-1/reduction/forearm/ulnarVarianceDifferenceMm and companion/operations/reduction
          4                | {state: 'united', operations: []}   | unknown, ask op-1/reduction/forearm/ulnarVarianceDifferenceMm and companion/operations/reduction
          4                | {state: 'unknown', operations: []}  | unknown, ask op-1/reduction/forearm/ulnarVarianceDifferenceMm and companion/state
          null             | {state: 'intact', operations: []}   | unknown, ask op-1/reduction/forearm/ulnarVarianceDifferenceMm
          """)
  void take_the_shortening_of_one_bone_from_that_of_the_other(
      String here, String beside, String reads) {
    CaseText text =
        forearm("radius")
            .at("", "{companion: {bone: 'ulna'}}")
            .at("/companion", beside)
            .at("/operations/0/reduction", "{shorteningMm: " + here + "}");
    assertThat(Taken.of("ulnar-variance-difference", text)).isEqualTo(reads);
  }
}
