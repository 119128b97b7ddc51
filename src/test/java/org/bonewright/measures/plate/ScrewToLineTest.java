package org.bonewright.measures.plate;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holes 16 mm apart; with hole 1 at 108 mm, holes 5 and 6 lie 8 mm from the middle of the line. */
class ScrewToLineTest {

  private static final String ID = "screw-to-line";
  private static final String PLATE = "/operations/0/fixation/0";

  private static CaseText measured() {
    return CaseText.plated().at(PLATE, "{place: {firstHoleMm: 108}}");
  }

  private static CaseText fixator(String pins) {
    return CaseText.plated()
        .at(
            "/operations/0",
            "{fixation: [{id: 'fixator-1', kind: 'external-fixator', pins: " + pins + "}]}");
  }

  @Test
  void it_runs_from_the_axis_of_the_screw_to_the_edge_of_the_zone() {
    // 8 - 1
    assertThat(Taken.of(ID, measured())).isEqualTo("7 assumed");
  }

  @Test
  void it_is_below_zero_inside_the_zone() {
    // hole 5 at -8 in a zone of 40: 8 - 20
    CaseText text =
        measured()
            .at("/injury", "{zone: {fromMm: 160, toMm: 200}}")
            .at(PLATE, "{place: {zoneBetweenHoles: [3, 8]}}");
    assertThat(Taken.of(ID, text)).isEqualTo("-12 assumed");
    assertThat(Taken.of("screws-outside-zone", text)).isEqualTo("2 fact");
  }

  @Test
  void it_never_falls_below_zero_for_a_screw_said_to_stand_beside_the_zone() {
    // 7 mm each way: 1 to 15, less 1
    assertThat(Taken.of(ID, CaseText.plated()))
        .isEqualTo("0–14 assumed, ask op-1/fixation/plate-1/place");
  }

  @Test
  void pins_count_as_well() {
    CaseText text = fixator("[{atMm: 130}, {atMm: 160}, {atMm: 205}, {atMm: 240}]");
    assertThat(Taken.of(ID, text)).isEqualTo("19 fact");
    assertThat(Taken.of("screw-system", text)).isEqualTo("large fact");
    assertThat(Taken.of("screws-outside-zone", text)).isEqualTo("2 fact");
  }

  @ParameterizedTest(name = "pin at {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # the zone lies from 179 to 181 mm; pins at 150, 210 and 220 are clear of it
          178                  | 2 fact
          179                  | 1 fact
          180                  | 1 fact
          181                  | 1 fact
          182                  | 1 fact
          {min: 175, max: 178} | 2 fact
          {min: 178, max: 180} | unknown, ask op-1/fixation/fixator-1/pins
          {min: 180, max: 182} | unknown, ask op-1/fixation/fixator-1/pins
          """)
  void a_pin_in_the_zone_or_on_its_edge_is_on_neither_side(String pin, String reads) {
    assertThat(
            Taken.of(
                "screws-outside-zone",
                fixator("[{atMm: 150}, {atMm: 210}, {atMm: 220}, {atMm: " + pin + "}]")))
        .isEqualTo(reads);
  }

  @ParameterizedTest(name = "pin at {0}: {1}")
  @CsvSource({"178, 1 fact", "180, 1 fact", "181, 1 fact", "182, 2 fact"})
  void a_pin_beyond_the_zone_is_on_its_far_side(String pin, String reads) {
    assertThat(
            Taken.of(
                "screws-outside-zone",
                fixator("[{atMm: 130}, {atMm: 150}, {atMm: 210}, {atMm: " + pin + "}]")))
        .isEqualTo(reads);
  }

  @Test
  void a_pin_at_a_level_that_is_a_range_is_asked_for() {
    assertThat(Taken.of(ID, fixator("[{atMm: {min: 150, max: 160}}, {atMm: 240}]")))
        .isEqualTo("19–29 fact, ask op-1/fixation/fixator-1/pins");
  }

  @Test
  void the_weaker_side_counts() {
    assertThat(Taken.of("screws-outside-zone", measured())).isEqualTo("3 fact");
    assertThat(Taken.of("screws-outside-zone", fixator("[{atMm: 130}, {atMm: 205}, {atMm: 240}]")))
        .isEqualTo("1 fact");
  }

  @Test
  void the_size_of_the_screws_is_that_of_the_plate() {
    assertThat(Taken.of("screw-system", measured())).isEqualTo("large fact");
    assertThat(Taken.of("screw-system", measured().at(PLATE, "{family: 'small-fragment'}")))
        .isEqualTo("small fact");
    assertThat(Taken.of("screw-system", measured().at(PLATE, "{family: null}")))
        .isEqualTo("large or small fact, ask op-1/fixation/plate-1/family");
  }

  @Test
  void what_is_missing_is_asked_for() {
    assertThat(Taken.of(ID, measured().at("/injury", "{zone: null, pattern: 'wedge'}")))
        .isEqualTo("unknown, ask injury/zone");
    assertThat(Taken.of(ID, measured().at(PLATE, "{screws: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/screws");
    assertThat(Taken.of(ID, measured().at(PLATE, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
    assertThat(Taken.of(ID, CaseText.bare())).isEqualTo("unknown, ask op-1/fixation");
    assertThat(Taken.of(ID, CaseText.nailed()))
        .isEqualTo("none: neither plate nor fixator in place");
    assertThat(Taken.of("screws-outside-zone", measured().at(PLATE, "{place: null}")))
        .isEqualTo("unknown, ask op-1/fixation/plate-1/place");
  }
}
