package org.bonewright.measures.graft;

import static org.assertj.core.api.Assertions.assertThat;

import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Taken;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShorteningTest {

  private static CaseText cut(double mm, double gap) {
    return CaseText.plated()
        .at("/operations/0", "{resection: [{fromMm: 170, toMm: " + (170 + mm) + "}]}")
        .at("/operations/0/reduction", "{gapNearMm: " + gap + ", gapFarMm: " + gap + "}");
  }

  private static String total(CaseText text) {
    return Taken.of("shortening-total", text);
  }

  private static CaseText stated(CaseText text, String mm) {
    return text.at("/operations/0/reduction", "{shorteningMm: " + mm + "}");
  }

  @Test
  void bone_cut_out_is_closed_when_the_gap_left_is_smaller() {
    assertThat(Taken.of("resection-closed", cut(12, 0))).isEqualTo("yes fact");
    assertThat(Taken.of("resection-closed", cut(12, 12))).isEqualTo("no fact");
    assertThat(
            Taken.of("resection-closed", CaseText.plated().at("/operations/0", "{resection: []}")))
        .isEqualTo("no fact");
    assertThat(Taken.of("resection-closed", CaseText.plated()))
        .isEqualTo("unknown, ask op-1/resection");
    assertThat(
            Taken.of(
                "resection-closed",
                cut(12, 0).at("/operations/0/reduction", "{gapFarMm: {min: 6, max: 14}}")))
        .isEqualTo("no or yes fact, ask op-1/resection");
  }

  @Test
  void a_stated_total_that_covers_what_was_cut_counts() {
    assertThat(total(stated(cut(12, 0), "14"))).isEqualTo("14 fact");
  }

  @Test
  void what_is_stated_counts_as_old_and_new_together() {
    CaseText text =
        stated(cut(12, 0), "22")
            .redone("plate-bent")
            .at("/operations/0", "{resection: []}")
            .at("/operations/0/reduction", "{shorteningMm: 10}");
    assertThat(total(text)).isEqualTo("22 fact");
  }

  @Test
  void without_a_statement_the_bone_is_at_least_as_short_as_what_was_cut_and_closed() {
    // 12 cut out, 2 left open
    assertThat(total(cut(12, 2))).isEqualTo("10–∞ fact, ask op-1/reduction/shorteningMm");
  }

  @Test
  void a_length_regained_without_a_cut_counts_as_stated() {
    CaseText text =
        stated(CaseText.plated(), "0")
            .at("/operations/0", "{resection: []}")
            .redone("plate-bent")
            .at("/operations/0/reduction", "{shorteningMm: 8}");
    assertThat(total(text)).isEqualTo("0 fact");
  }

  @ParameterizedTest(name = "{0} beside a {1}: {2}")
  @CsvSource({
    "fibula, tibia, intact, no fact",
    "fibula, tibia, united, no fact",
    "fibula, tibia, fractured, yes fact",
    "fibula, tibia, resected, yes fact",
    "ulna, radius, fractured, no fact",
    "ulna, radius, resected, yes fact",
  })
  void the_bone_beside_of_a_plan_is_read_from_its_state(
      String beside, String bone, String state, String reads) {
    assertThat(Taken.of("companion-shortened", beside(beside, bone, state))).isEqualTo(reads);
  }

  private static CaseText beside(String beside, String bone, String state) {
    return CaseText.plated()
        .redone("plate-bent")
        .with("{companion: {bone: '" + beside + "', state: '" + state + "'}}")
        .at("/bone", "{name: '" + bone + "'}");
  }

  @Test
  void what_the_operation_says_of_the_bone_beside_comes_first() {
    CaseText text =
        beside("fibula", "tibia", "intact").at("/plans/0/stages/0", "{companionCut: 'yes'}");
    assertThat(Taken.of("companion-shortened", text)).isEqualTo("yes fact");
    assertThat(Taken.of("companion-shortened", CaseText.plated()))
        .isEqualTo("unknown, ask op-1/companionCut");
    assertThat(Taken.of("companion-shortened", CaseText.plated().at("/bone", "{name: 'humerus'}")))
        .isEqualTo("single fact");
  }
}
