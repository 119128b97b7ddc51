package org.bonewright.measures.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bone is 24 mm thick; the plate's holes are 16 mm apart. */
class ZoneLengthTest {

  private static CaseText injury(String patch) {
    return CaseText.plated().at("/injury", "{" + patch + "}");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          pattern: 'transverse', zone: {fromMm: 179, toMm: 181}                   | 24 fact
          pattern: 'spiral', zone: {fromMm: 150, toMm: 210}                       | 60 fact
          pattern: 'spiral', zone: {fromMm: {min: 165, max: 170}, toMm: {min: 190, max: 195}} | 21.6–30 assumed, ask injury/zone and bone/sections
          pattern: 'multifragmentary', zone: {fromMm: 179, toMm: 181}             | 2 fact
          pattern: 'wedge', zone: {fromMm: 160, toMm: {min: 190, max: 200}}       | 30–40 fact, ask injury/zone
          pattern: 'segmental-defect', zone: {fromMm: null, toMm: null, lengthMm: 35} | 35 fact
          """)
  void is_as_stated_but_a_simple_line_counts_at_least_the_thickness_of_the_bone(
      String stated, String reads) {
    assertThat(Taken.of("zone-length", injury(stated))).isEqualTo(reads);
  }

  @Test
  void the_thickness_is_assumed_where_it_is_not_measured() {
    // T1, man: 24 x 0.9 to 29 x 1.1
    assertThat(Taken.of("zone-length", CaseText.plated().at("/bone", "{sections: null}")))
        .isEqualTo("21.6–31.9 assumed, ask bone/sections");
  }

  @Test
  void a_line_shorter_than_the_bone_is_thick_says_why_it_counts_as_longer() {
    assertThat(working(injury("zone: {fromMm: 179, toMm: 181}")))
        .isEqualTo("2 mm along the axis, counted as at least the outer diameter of 24 mm");
    assertThat(working(injury("pattern: 'spiral', zone: {fromMm: 150, toMm: 210}")))
        .isEqualTo("zone stated");
  }

  private static String working(CaseText text) {
    return Taken.reading("zone-length", Taken.subject(text.file(), "op-1")).working();
  }

  @Nested
  class NotStated {

    @Test
    void a_line_found_to_be_transverse_later_on_counts_as_thick_as_the_bone_whatever_the_holes() {
      CaseText text =
          injury("pattern: 'wedge', zone: null")
              .at("/operations/0/fixation/0", "{place: {zoneBetweenHoles: [3, 8]}}")
              .redone("plate-bent")
              .with("{findings: [{day: 150, pattern: 'transverse'}]}");
      assertThat(Taken.of("zone-length", text))
          .isEqualTo("21.6–26.4 assumed, ask injury/zone and bone/sections");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '"',
        textBlock =
            """
            # 24 mm somewhere on the bone: 21.6 to 26.4 at the line
            pattern: 'transverse'                    | 21.6–26.4 assumed, ask injury/zone and bone/sections
            # 21.6 x tan 60 = 37.412, 26.4 x tan 60 = 45.726
            # 26.4 x tan 30 = 15.2: the thickness counts
            pattern: 'oblique', obliquityDeg: 30     | 21.6–26.4 assumed, ask injury/zone and bone/sections
            """)
    void a_line_across_the_shaft_gives_it(String stated, String reads) {
      assertThat(Taken.of("zone-length", injury(stated + ", zone: null"))).isEqualTo(reads);
    }

    @ParameterizedTest(name = "zone between holes {0}: {1}")
    @CsvSource(
        delimiter = '|',
        textBlock =
            """
            # 21.6 x tan 60 = 37.412, 26.4 x tan 60 = 45.726; the holes leave 16 to 48 mm
            [4, 7] | 37.412–45.726 assumed, ask injury/zone
            # the holes leave 48 to 80 mm: the film of the plate counts
            [3, 8] | 48–80 assumed, ask injury/zone
            """)
    void an_oblique_line_is_no_longer_than_the_holes_leave_room_for(String holes, String reads) {
      CaseText text =
          injury("pattern: 'oblique', obliquityDeg: 60, zone: null")
              .at("/operations/0/fixation/0", "{place: {zoneBetweenHoles: " + holes + "}}");
      assertThat(Taken.of("zone-length", text)).isEqualTo(reads);
    }

    @Test
    void an_angle_and_holes_that_overlap_leave_what_both_allow() {
      // 21.6 x tan 55 = 30.848, 26.4 x tan 55 = 37.703; the holes leave 0 to 32 mm
      CaseText text =
          injury("pattern: 'oblique', obliquityDeg: 55, zone: null")
              .at("/operations/0/fixation/0", "{place: {zoneBetweenHoles: [4, 6]}}");
      assertThat(Taken.of("zone-length", text)).isEqualTo("30.848–32 assumed, ask injury/zone");
    }

    @Test
    void the_holes_either_side_leave_room_for_it() {
      // one hole between touches it: from 0; it fits between holes 32 mm apart
      CaseText text =
          injury("pattern: 'multifragmentary', zone: null")
              .at("/operations/0/fixation/0", "{place: {zoneBetweenHoles: [4, 6]}}");
      assertThat(Taken.of("zone-length", text)).isEqualTo("0–32 assumed, ask injury/zone");
    }

    @Test
    void nothing_tells_it_under_a_nail() {
      CaseText text = CaseText.nailed().at("/injury", "{pattern: 'multifragmentary', zone: null}");
      assertThat(Taken.of("zone-length", text)).isEqualTo("unknown, ask injury/zone");
    }
  }

  @Nested
  class UnknownPattern {

    @Test
    void a_short_zone_may_be_a_simple_line() {
      assertThat(Taken.of("zone-length", injury("pattern: null")))
          .isEqualTo("2–24 fact, ask injury/pattern");
    }

    @Test
    void a_zone_longer_than_the_bone_is_thick_counts_as_it_is_either_way() {
      assertThat(Taken.of("zone-length", injury("pattern: null, zone: {fromMm: 160, toMm: 200}")))
          .isEqualTo("40 fact");
    }
  }

  @Nested
  class Resected {

    private static CaseText resected(int from, int to) {
      return injury("pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}")
          .at(
              "/operations/0",
              "{reduction: {gapNearMm: 0, gapFarMm: 0}, resection: [{fromMm: "
                  + from
                  + ", toMm: "
                  + to
                  + "}]}");
    }

    @Test
    void is_what_is_left() {
      assertThat(Taken.of("zone-length", resected(170, 180))).isEqualTo("30 fact");
    }

    @Test
    void may_be_as_long_as_before_where_the_gap_left_is_not_recorded() {
      CaseText text = resected(170, 180).at("/operations/0", "{reduction: null}");
      assertThat(Taken.of("zone-length", text)).startsWith("30–40");
    }

    @Test
    void where_nothing_is_left_the_cut_ends_count_as_a_simple_line_at_their_new_level() {
      // the ends meet at 155, away from the section measured: 24 ± 10 %
      assertThat(Taken.of("zone-length", resected(155, 205)))
          .isEqualTo("21.6–26.4 assumed, ask bone/sections");
    }

    @Test
    void a_resection_in_an_earlier_stage_of_the_plan_counts() {
      CaseText text =
          injury("pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}")
              .redone("infection")
              .at(
                  "/plans/0",
                  "{stages: [{id: 'stage-1', reduction: {gapNearMm: 0, gapFarMm: 0}, resection: [{fromMm: 170, toMm: 185}]},"
                      + " {id: 'stage-2'}]}");
      assertThat(Taken.of("zone-length", text, "plan-a/stage-1")).isEqualTo("25 fact");
      assertThat(Taken.of("zone-length", text, "plan-a/stage-2")).isEqualTo("25 fact");
      assertThat(Taken.of("zone-length", text, "plan-a")).isEqualTo("25 fact");
      assertThat(Taken.of("zone-length", text, "op-1")).isEqualTo("40 fact");
    }
  }

  @Test
  void follows_what_was_found_before_the_operation_and_nothing_later() {
    CaseText text =
        injury("pattern: 'multifragmentary', zone: {fromMm: 160, toMm: 200}")
            .with(
                "{findings: [{day: 50, zone: {fromMm: 170, toMm: 190}},"
                    + " {day: 150, zone: {fromMm: 175, toMm: 185}}]}")
            .at("/operations/0", "{day: 100}")
            .redone("plate-bent");
    assertThat(Taken.of("zone-length", text, "op-1")).isEqualTo("20 fact");
    assertThat(Taken.of("zone-length", text)).isEqualTo("10 fact");
  }
}
