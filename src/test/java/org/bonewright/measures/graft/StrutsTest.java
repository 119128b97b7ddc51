package org.bonewright.measures.graft;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tibia of 24 mm with a canal of 10 mm; zone from 179 to 181 mm; holes 16 mm apart from 108 mm. */
class StrutsTest {

  private static CaseText strut(String where, String change) {
    CaseText text = CaseText.plated();
    String plate = text.tree().at("/operations/0/fixation/0").toString();
    return text.at(
            "/operations/0",
            "{strippedPercent: 40, fixation: ["
                + plate
                + ", {id: 's', kind: 'strut', where: '"
                + where
                + "', fromMm: 130, toMm: 220, outerMm: 8, wallMm: 5, surface: 'lateral'}]}")
        .at("/operations/0/fixation/0/place", "{firstHoleMm: 108}")
        .at("/operations/0/fixation/1", change);
  }

  private static CaseText inside(String change) {
    return strut("intramedullary", change);
  }

  @Test
  void the_shorter_side_beyond_the_zone_counts() {
    // near 179 − 130 = 49, far 220 − 181 = 39
    assertThat(Taken.of("canal-strut-beyond", inside("{}"))).isEqualTo("39 fact");
    // near 179 − 170 = 9
    assertThat(Taken.of("canal-strut-beyond", inside("{fromMm: 170}"))).isEqualTo("9 fact");
  }

  @Test
  void the_zone_is_at_least_the_gap_that_a_resection_leaves() {
    CaseText text =
        inside("{}")
            .at("/operations/0", "{resection: [{fromMm: 170, toMm: 190}]}")
            .at("/operations/0/reduction", "{gapNearMm: 20, gapFarMm: 20}");
    // edges 180 ± 10: near 40, far 30
    assertThat(Taken.of("canal-strut-beyond", text)).isEqualTo("30 fact");
  }

  @Test
  void screws_through_both_cortices_at_its_levels_count_on_the_weaker_side() {
    // holes at 108, 124, 140, 156, 172 | 188, 204, 220, 236, 252; screws in 1, 3, 5, 6, 8, 10
    // near 140 and 172; far 188 and 220
    assertThat(Taken.of("canal-strut-screws", inside("{}"))).isEqualTo("2 fact");
    assertThat(Taken.of("canal-strut-screws", inside("{toMm: 219}"))).isEqualTo("1 fact");
    CaseText single = inside("{}").at("/operations/0/fixation/0/screws/0", "{cortices: 1}");
    assertThat(Taken.of("canal-strut-screws", single)).isEqualTo("0 fact");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          type: 'cortical', cortices: null               | 2 fact
          type: 'locking', cortices: null                | 0–2 fact, ask op-1/fixation/s
          type: 'locking', cortices: 2                   | 2 fact
          type: 'cortical', cortices: {min: 1, max: 2}   | 0–2 fact, ask op-1/fixation/s
          type: 'locking', cortices: 1                   | 0 fact
          """)
  void a_screw_holds_it_by_both_cortices_which_a_locking_one_may_not_cross(
      String screw, String reads) {
    CaseText text = inside("{}").at("/operations/0/fixation/0/screws/0", "{" + screw + "}");
    assertThat(Taken.of("canal-strut-screws", text)).isEqualTo(reads);
  }

  @Test
  void the_screws_on_either_side_are_told_and_screws_not_told_are_asked_for() {
    assertThat(working(inside("{toMm: 219}"))).isEqualTo("screws through it: near 2, far 1");
    CaseText open =
        inside("{toMm: 219}")
            .at("/operations/0/fixation/0/screws/0", "{type: 'locking', cortices: null}");
    assertThat(working(open)).isEqualTo("screws through it: near 0 to 2, far 0 to 1");
    CaseText untold = inside("{}").at("/operations/0/fixation/0", "{screws: null}");
    assertThat(Taken.of("canal-strut-screws", untold)).isEqualTo("unknown, ask op-1/fixation/s");
  }

  private static String working(CaseText text) {
    return Taken.reading("canal-strut-screws", Taken.subject(text.file(), "op-1")).working();
  }

  @Test
  void the_gap_that_a_resection_leaves_is_no_wider_than_what_was_cut_out() {
    CaseText text = inside("{}").at("/operations/0", "{resection: [{fromMm: 170, toMm: 190}]}");
    // nothing to 20 mm left open: the far end lies at 170 to 190
    CaseText untold = text.at("/operations/0", "{reduction: null}");
    assertThat(Taken.of("canal-strut-beyond", untold)).startsWith("30–50 ");
    // 10 to 20 of 10 to 40: the far end at 180 to 190
    CaseText ranged =
        text.at("/operations/0/reduction", "{gapNearMm: 10, gapFarMm: {min: 10, max: 40}}");
    assertThat(Taken.of("canal-strut-beyond", ranged)).startsWith("30–40 ");
    // nothing cut out: the zone as it is, whatever the gap
    CaseText whole = ranged.at("/operations/0", "{resection: []}");
    assertThat(Taken.of("canal-strut-beyond", whole)).isEqualTo("39 fact");
  }

  @Test
  void its_diameter_is_held_against_the_canal() {
    assertThat(Taken.of("canal-strut-fill", inside("{}"))).isEqualTo("0.8 fact");
    assertThat(Taken.of("canal-strut-fill", inside("{outerMm: null}")))
        .isEqualTo("unknown, ask op-1/fixation/s/outerMm");
  }

  @Test
  void there_is_none_without_a_strut_of_that_place() {
    assertThat(Taken.of("canal-strut-used", CaseText.plated())).isEqualTo("no fact");
    assertThat(Taken.of("canal-strut-used", inside("{}"))).isEqualTo("yes fact");
    assertThat(Taken.of("onlay-strut-beyond", inside("{}"))).isEqualTo("none: no such strut");
    assertThat(Taken.of("stripped-at-strut", inside("{}"))).isEqualTo("none: no onlay strut");
  }

  @Test
  void an_onlay_strut_is_measured_in_bone_diameters_and_by_its_wall() {
    // 90 mm / 24 mm
    assertThat(Taken.of("onlay-strut-diameters", strut("onlay", "{}"))).isEqualTo("3.75 fact");
    assertThat(Taken.of("onlay-strut-wall", strut("onlay", "{}"))).isEqualTo("5 fact");
    assertThat(Taken.of("stripped-at-strut", strut("onlay", "{}"))).isEqualTo("40 fact");
  }

  @Test
  void a_screw_holds_an_opposite_strut_when_its_tip_stands_out_by_the_wall() {
    CaseText text = strut("onlay", "{}");
    String row = "/operations/0/fixation/0/screws/0";
    assertThat(Taken.of("onlay-strut-fixings", text.at(row, "{tipBeyondMm: 5}")))
        .isEqualTo("2 fact");
    assertThat(Taken.of("onlay-strut-fixings", text.at(row, "{tipBeyondMm: 4}")))
        .isEqualTo("0 fact");
    assertThat(Taken.of("onlay-strut-fixings", text)).isEqualTo("0–2 fact, ask op-1/fixation/s");
  }

  @ParameterizedTest(name = "strut at {0} degrees: {1}")
  @CsvSource({
    // the plate lies at 270
    "300, 2 fact",
    "301, 0 fact",
    "135, 2 fact",
    "136, 0 fact",
  })
  void under_the_plate_is_within_thirty_degrees_and_opposite_from_135(
      String surface, String reads) {
    CaseText text =
        strut("onlay", "{surface: " + surface + "}")
            .at("/operations/0/fixation/0/screws/0", "{tipBeyondMm: 5}");
    if (surface.startsWith("13")) {
      assertThat(Taken.of("onlay-strut-fixings", text)).isEqualTo(reads);
    } else {
      assertThat(
              Taken.of(
                  "onlay-strut-fixings",
                  text.at("/operations/0/fixation/0/screws/0", "{tipBeyondMm: 0}")))
          .isEqualTo(reads);
    }
  }

  @Test
  void a_tip_wall_or_surface_that_leaves_it_open_gives_a_range() {
    String row = "/operations/0/fixation/0/screws/0";
    String open = "0–2 fact, ask op-1/fixation/s";
    assertThat(
            Taken.of(
                "onlay-strut-fixings",
                strut("onlay", "{}").at(row, "{tipBeyondMm: {min: 4, max: 6}}")))
        .isEqualTo(open);
    CaseText wall = strut("onlay", "{wallMm: {min: 4, max: 6}}");
    assertThat(Taken.of("onlay-strut-fixings", wall.at(row, "{tipBeyondMm: 3}")))
        .isEqualTo("0 fact");
    assertThat(Taken.of("onlay-strut-fixings", wall.at(row, "{tipBeyondMm: 5}"))).isEqualTo(open);
    assertThat(Taken.of("onlay-strut-fixings", wall.at(row, "{tipBeyondMm: 6}")))
        .isEqualTo("2 fact");
    assertThat(Taken.of("onlay-strut-fixings", strut("onlay", "{surface: null}"))).isEqualTo(open);
  }

  @ParameterizedTest(name = "wires at {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # the strut runs from 130 to 220, the zone from 179 to 181
          [140, 200]                     | 1 fact
          [130, 220]                     | 1 fact
          [129, 220]                     | 0 fact
          [130, 221]                     | 0 fact
          [179, 200]                     | 1 fact
          [180, 200]                     | 0 fact
          [140, 181]                     | 1 fact
          [140, 180]                     | 0 fact
          [140, 150]                     | 0 fact
          [190, 200]                     | 0 fact
          [{min: 170, max: 180}, 200]    | 0–1 fact, ask op-1/fixation/s
          [{min: 179, max: 180}, 200]    | 0–1 fact, ask op-1/fixation/s
          [140, {min: 180, max: 190}]    | 0–1 fact, ask op-1/fixation/s
          [{min: 125, max: 135}, 200]    | 0–1 fact, ask op-1/fixation/s
          [{min: 125, max: 130}, 200]    | 0–1 fact, ask op-1/fixation/s
          [140, {min: 220, max: 225}]    | 0–1 fact, ask op-1/fixation/s
          """)
  void a_wire_counts_within_the_strut_and_clear_of_the_zone(String at, String reads) {
    assertThat(Taken.of("onlay-strut-fixings", wired(at, ", holds: 'strut'"))).isEqualTo(reads);
  }

  @Test
  void a_wire_of_which_nobody_says_what_it_holds_may_hold_the_strut() {
    assertThat(Taken.of("onlay-strut-fixings", wired("[140, 200]", "")))
        .isEqualTo("0–1 fact, ask op-1/fixation/s");
  }

  private static CaseText wired(String at, String holds) {
    CaseText text = strut("onlay", "{surface: 'anterior'}");
    return text.at(
        "/operations/0",
        "{fixation: "
            + text.tree().at("/operations/0/fixation").toString().replaceFirst("]$", "")
            + ", {id: 'w', kind: 'cerclage', atMm: "
            + at
            + holds
            + "}]}");
  }

  @Test
  void a_screw_holds_a_strut_under_its_plate_and_none_at_a_right_angle() {
    assertThat(Taken.of("onlay-strut-fixings", strut("onlay", "{surface: 'medial'}")))
        .isEqualTo("2 fact");
    assertThat(Taken.of("onlay-strut-fixings", strut("onlay", "{surface: 'anterior'}")))
        .isEqualTo("0 fact");
  }

  @Test
  void wires_that_hold_the_strut_count_on_their_side() {
    CaseText text = strut("onlay", "{surface: 'anterior'}");
    String both =
        text.tree().at("/operations/0/fixation").toString().replaceFirst("]$", "")
            + ", {id: 'w', kind: 'cerclage', atMm: [140, 160, 200], holds: 'strut'}]";
    // near 140 and 160, far 200
    assertThat(
            Taken.of("onlay-strut-fixings", text.at("/operations/0", "{fixation: " + both + "}")))
        .isEqualTo("1 fact");
    assertThat(
            Taken.of(
                "onlay-strut-fixings",
                text.at(
                    "/operations/0", "{fixation: " + both.replace("'strut'}", "'wedge'}") + "}")))
        .isEqualTo("0 fact");
  }
}
