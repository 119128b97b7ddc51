package org.bonewright.measures.graft;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;

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
