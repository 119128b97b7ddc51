package org.bonewright.measures.limb;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.bone.Dimension;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Taken;
import org.bonewright.measures.limb.RadialNervePath.Face;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The radial nerve behind the humerus from 97 mm below the acromion to 100 mm above the epicondyle,
 * outside from 107 mm above it. The acromion lies 0 to 15 mm above the head, the epicondyle 10 to
 * 25 mm above the far end. Of a bone of 310 mm that is, in levels below the head: behind from 82–97
 * to 185–200, outside from 178–193 to 310.
 */
class NerveCorridorTest {

  private static CaseText humerus(double length) {
    return CaseText.plated().at("/bone", "{name: 'humerus', lengthMm: " + length + "}");
  }

  private static RadialNervePath path(CaseText text) {
    return new RadialNervePath(new Scene(Taken.subject(text.file(), "op-1"), Taken.CATALOGUE));
  }

  private static CaseText fixator(CaseText text, String pin) {
    return text.at(
        "/operations/0",
        "{fixation: [{id: 'fixator-1', kind: 'external-fixator', pins: [" + pin + "]}]}");
  }

  @ParameterizedTest(name = "{0} of a bone of {1} mm runs from {2} to {3}")
  @CsvSource({
    "BEHIND,  310, 82–97,       185–200",
    "OUTSIDE, 310, 178–193,     310",
    // up to a tenth more or less the distances stay as they are
    "BEHIND,  279, 82–97,       154–169",
    "BEHIND,  341, 82–97,       216–231",
    "OUTSIDE, 341, 209–224,     341",
    // 400 / 310 × 97 = 125.2 less 0 to 15; 400 − 10 to 25 − 400 / 310 × 100 = 129
    "BEHIND,  400, 110–125,     246–261",
    // 400 − 10 to 25 − 38 % of 400
    "OUTSIDE, 400, 223–238,     400",
    // 248 / 310 = 0.8: 77.6 less 0 to 15; 248 − 10 to 25 − 80
    "BEHIND,  248, 62.6–77.6,   143–158",
    // 248 − 10 to 25 − 94.24
    "OUTSIDE, 248, 129–144,     248",
  })
  void follows_the_length_of_the_bone(Face face, double length, String from, String to) {
    RadialNervePath path = path(humerus(length));

    assertThat(path.from(face).numbers()).isEqualTo(from);
    assertThat(path.to(face).numbers()).isEqualTo(to);
  }

  @ParameterizedTest(name = "{0} with the landmark {1} below the head: from {2} to {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          BEHIND  | 20                | 62–77   | 165–180
          BEHIND  | -20               | 102–117 | 205–220
          OUTSIDE | 20                | 158–173 | 290
          OUTSIDE | -20               | 198–213 | 330
          BEHIND  | {min: 0, max: 20} | 62–97   | 165–200
          OUTSIDE | {min: 0, max: 20} | 158–193 | 290–310
          """)
  void moves_with_the_landmark_that_levels_are_read_from(
      Face face, String offset, String from, String to) {
    RadialNervePath path = path(humerus(310).at("/bone", "{landmarkOffsetMm: " + offset + "}"));

    assertThat(path.from(face).numbers()).isEqualTo(from);
    assertThat(path.to(face).numbers()).isEqualTo(to);
  }

  @ParameterizedTest(name = "{0} from {1} to {2}: {3}")
  @CsvSource({
    // from 97 to 185 at least, from 82 to 200 at most
    "BEHIND,  60,  220, 88–118",
    "BEHIND,  120, 160, 40",
    "BEHIND,  190, 300, 0–10",
    "BEHIND,  200, 300, 0",
    "BEHIND,  40,  82,  0",
    "OUTSIDE, 60,  178, 0",
    // 220 less 193, 220 less 178
    "OUTSIDE, 60,  220, 27–42",
    "OUTSIDE, 200, 330, 110"
  })
  void is_met_by_as_much_of_a_plate_as_lies_within(
      Face face, double near, double far, String inside) {
    assertThat(path(humerus(310)).inside(face, exactly(near), exactly(far)).numbers())
        .isEqualTo(inside);
  }

  private static Dimension exactly(double value) {
    return new Dimension(value, value, false, "");
  }

  @ParameterizedTest(name = "a pin at {0} towards {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # the nearer of the two ends: 141 − 97 and 185 − 141; 141 − 82 and 200 − 141
          141 | 180 | 44–59 assumed, ask op-1/fixation
          80  | 180 | 0 assumed
          90  | 180 | 0–8 assumed, ask op-1/fixation
          97  | 180 | 0–15 assumed, ask op-1/fixation
          190 | 180 | 0–10 assumed, ask op-1/fixation
          200 | 180 | 0 assumed
          170 | 90  | 0 assumed
          185 | 90  | 0–7 assumed, ask op-1/fixation
          # 250 − 193 and 310 − 250; 250 − 178 and 310 − 250
          250 | 90  | 57–60 assumed, ask op-1/fixation
          # a face reaches 45 degrees to either side
          141 | 134 | 0 assumed
          141 | 135 | 44–59 assumed, ask op-1/fixation
          141 | 225 | 44–59 assumed, ask op-1/fixation
          141 | 226 | 0 fact
          250 | 45  | 57–60 assumed, ask op-1/fixation
          250 | 44  | 0 fact
          141 | 0   | 0 fact
          """)
  void is_met_by_a_pin_by_level_and_direction(int at, int direction, String reads) {
    CaseText text = fixator(humerus(310), "{atMm: " + at + ", direction: " + direction + "}");
    assertThat(Taken.of("metal-in-nerve-zone", text)).isEqualTo(reads);
  }

  @ParameterizedTest(name = "offset {0}, a pin behind at {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          20                | 121 | 44–59 assumed, ask op-1/fixation
          -20               | 161 | 44–59 assumed, ask op-1/fixation
          # 141 − 97 and 165 − 141 at least; 141 − 62 and 200 − 141 at most
          {min: 0, max: 20} | 141 | 24–59 assumed, ask op-1/fixation
          """)
  void is_met_at_the_same_place_from_whichever_landmark(String offset, int at, String reads) {
    CaseText text = humerus(310).at("/bone", "{landmarkOffsetMm: " + offset + "}");
    assertThat(
            Taken.of(
                "metal-in-nerve-zone", fixator(text, "{atMm: " + at + ", direction: 'posterior'}")))
        .isEqualTo(reads);
  }

  @ParameterizedTest(name = "a bolt {0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          {end: 'far', atMm: 250, plane: 'lateral'}  | 57–60 assumed, ask op-1/fixation
          {end: 'far', atMm: 250, plane: 'anterior'} | 0 fact
          # it may come from the outer side, or not
          {end: 'far', atMm: 250}                    | 0–60 assumed, ask op-1/fixation
          """)
  void is_met_by_a_bolt_of_a_nail(String bolt, String reads) {
    CaseText text =
        humerus(310)
            .at(
                "/operations/0",
                "{fixation: [{id: 'nail-1', kind: 'nail', bolts: [" + bolt + "]}]}");
    assertThat(Taken.of("metal-in-nerve-zone", text)).isEqualTo(reads);
  }

  /** Holes 1 and 10 are 144 mm apart; 8 mm of the 160 are left beyond each: levels 112 to 272. */
  @ParameterizedTest(name = "a plate on the {0} surface by the {1} approach: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          anterior      | anterior      | 0 fact
          # from 112 to 185 or 200
          posterior     | posterior     | 73–88 assumed, ask op-1/fixation
          # the approach crosses where the plate does not lie
          anterior      | posterior     | 73–88 assumed, ask op-1/fixation
          # from 193 or 178 to 272
          anterolateral | anterolateral | 79–94 assumed, ask op-1/fixation
          anterior      | lateral       | 79–94 assumed, ask op-1/fixation
          # an approach through small incisions says nothing of the face
          lateral       | closed        | 79–94 assumed, ask op-1/fixation
          """)
  void is_met_by_a_plate_by_its_surface_and_approach(
      String surface, String approach, String reads) {
    assertThat(
            Taken.of(
                "metal-in-nerve-zone",
                plate("surface: '" + surface + "'", "approach: '" + approach + "'")))
        .isEqualTo(reads);
  }

  @Test
  void may_be_met_by_a_plate_whose_surface_or_approach_is_not_told() {
    assertThat(Taken.of("metal-in-nerve-zone", plate("surface: 'anterior'", "concept: 'absolute'")))
        .isEqualTo("0–94 assumed, ask op-1/fixation");
    assertThat(Taken.of("metal-in-nerve-zone", plate("holes: 10", "approach: 'anterior'")))
        .isEqualTo("0–94 assumed, ask op-1/fixation");
  }

  private static CaseText plate(String surface, String approach) {
    return humerus(310)
        .at(
            "/operations/0",
            "{"
                + approach
                + ", fixation: [{id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow',"
                + " holes: 10, spacingMm: 16, lengthMm: 160, place: {firstHoleMm: 120}, "
                + surface
                + "}]}");
  }

  @Test
  void is_one_of_the_humerus_and_not_known_where_the_metal_is_not() {
    assertThat(Taken.of("metal-in-nerve-zone", CaseText.plated()))
        .isEqualTo("none: not the humerus");
    assertThat(
            Taken.of("metal-in-nerve-zone", humerus(310).at("/operations/0", "{fixation: null}")))
        .isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of("metal-in-nerve-zone", humerus(310).at("/operations/0", "{fixation: []}")))
        .isEqualTo("0 fact");
  }
}
