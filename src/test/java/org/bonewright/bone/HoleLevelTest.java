package org.bonewright.bone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plate of ten holes 16 mm apart over a zone of 2 mm about 180 mm. */
class HoleLevelTest {

  private static final FractureZone ZONE =
      new FractureZone(
          Optional.of(new Dimension(2, 2, false, "")),
          Optional.of(new Dimension(180, 180, false, "")));

  private static String level(String plate, FractureZone zone, int hole) {
    return new PlacedPlate(CaseText.plated().at("/operations/0/fixation/0", plate).plate(), zone)
        .level(hole)
        .map(at -> at.numbers() + (at.assumed() ? " assumed" : ""))
        .orElse("unknown");
  }

  @ParameterizedTest(name = "hole {1} of {0}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {place: {firstHoleMm: 108}}                                      | 1  | 108
          {place: {firstHoleMm: 108}}                                      | 5  | 172 assumed
          {place: {firstHoleMm: 108}, spacingMm: 15}                       | 5  | 168
          {place: {firstHoleMm: {min: 106, max: 110}}, spacingMm: 15}      | 3  | 136–140
          {place: {firstHoleMm: 108}, spacingMm: {min: 15, max: 16}}       | 3  | 138–140
          # half a spacing from the middle, free by (16 - 2) / 2 = 7 mm
          {place: {zoneBetweenHoles: [5, 6], firstHoleMm: null}}           | 5  | 165–179 assumed
          {place: {zoneBetweenHoles: [5, 6], firstHoleMm: null}}           | 7  | 197–211 assumed
          {place: {zoneBetweenHoles: [5, 6], firstHoleMm: 108}}            | 7  | 204 assumed
          {place: {firstHoleMm: 108}, family: null, spacingMm: null}       | 1  | 108
          {place: {firstHoleMm: 108}, family: null, spacingMm: null}       | 2  | unknown
          {place: null}                                                    | 1  | unknown
          """)
  void is_counted_from_the_first_hole_or_else_from_the_zone(
      String plate, int hole, String expected) {
    assertThat(level(plate, ZONE, hole)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"5", "6"})
  void is_unknown_by_holes_where_the_zone_has_no_level(int hole) {
    assertThat(level("{}", FractureZone.UNKNOWN, hole)).isEqualTo("unknown");
    assertThat(level("{place: {firstHoleMm: 108}}", FractureZone.UNKNOWN, hole))
        .isNotEqualTo("unknown");
  }
}
