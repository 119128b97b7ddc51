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

  @Test
  void a_plan_that_neither_cuts_nor_fixes_leaves_the_bone_as_it_was() {
    CaseText text =
        stated(CaseText.plated(), "8")
            .at("/operations/0", "{resection: []}")
            .redone("plate-bent")
            .at(
                "/plans/0/stages/0",
                "{reduction: null, compression: null, fixation: [], resection: []}");
    assertThat(total(text)).isEqualTo("8 fact");
    // 12 mm more cut out and closed
    CaseText cut =
        text.at(
            "/plans/0/stages/0",
            "{resection: [{fromMm: 170, toMm: 182}], reduction: {gapNearMm: 0, gapFarMm: 0}}");
    assertThat(total(cut)).isEqualTo("20–∞ fact, ask plan-a/stage-1/reduction/shorteningMm");
    // set anew, but not told how
    CaseText fixed =
        text.at("/plans/0/stages/0", "{fixation: [{id: 'p', kind: 'plate', holes: 8}]}");
    assertThat(total(fixed)).isEqualTo("8–∞ fact, ask plan-a/stage-1/reduction/shorteningMm");
    CaseText reduced = text.at("/plans/0/stages/0", "{reduction: {gapNearMm: 0}}");
    assertThat(total(reduced)).isEqualTo("8–∞ fact, ask plan-a/stage-1/reduction/shorteningMm");
  }

  @Test
  void
      an_operation_of_the_past_that_does_not_tell_of_the_bone_beside_leaves_it_open_unless_whole() {
    CaseText broken = CaseText.plated().with("{companion: {bone: 'fibula', state: 'fractured'}}");
    assertThat(Taken.of("companion-shortened", broken)).isEqualTo("unknown, ask op-1/companionCut");
    CaseText whole = CaseText.plated().with("{companion: {bone: 'fibula', state: 'intact'}}");
    assertThat(Taken.of("companion-shortened", whole)).isEqualTo("no fact");
    CaseText unsure = whole.at("/operations/0", "{companionCut: 'unknown'}");
    assertThat(Taken.of("companion-shortened", unsure)).isEqualTo("no fact");
  }

  @Test
  void a_bone_beside_that_was_cut_in_an_operation_of_its_own_before_counts() {
    String companion =
        "{companion: {bone: 'fibula', state: 'united', operations: [{id: 'f-1', day: 250,"
            + " resection: %s}]}}";
    CaseText text =
        CaseText.plated()
            .at("/operations/0", "{companionCut: 'no'}")
            .redone("plate-bent")
            .at("/plans/0/stages/0", "{companionCut: null}");
    CaseText cut = text.with(companion.formatted("[{fromMm: 170, toMm: 190}]"));
    assertThat(Taken.of("companion-shortened", cut)).isEqualTo("yes fact");
    // not yet on day 2
    assertThat(Taken.of("companion-shortened", cut, "op-1")).isEqualTo("no fact");
    assertThat(Taken.of("companion-shortened", text.with(companion.formatted("[]"))))
        .isEqualTo("no fact");
  }

  @Test
  void of_a_forearm_the_other_bone_is_asked_about() {
    CaseText text = CaseText.plated().at("/bone", "{name: 'radius'}");
    assertThat(asked(text)).isEqualTo("Is the other forearm bone whole, and is it shortened too?");
    assertThat(asked(CaseText.plated())).isEqualTo("Is the fibula whole, and is it cut too?");
  }

  private static String asked(CaseText text) {
    return Taken.reading("companion-shortened", Taken.subject(text.file(), "op-1"))
        .missing()
        .get(0)
        .question();
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
